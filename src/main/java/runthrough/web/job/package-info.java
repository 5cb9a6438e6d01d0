/**
 * Computations that take longer than a request ({@link runthrough.web.job.Jobs}), and requests that are not answered ({@link
 * runthrough.web.job.Refusal}).
 *
 * <p>Invariants: so many jobs at once and no more, each for a bounded time and only while somebody asks after it.
 */
@NullMarked
package runthrough.web.job;

import org.jspecify.annotations.NullMarked;
