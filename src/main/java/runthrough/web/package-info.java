/**
 * The page for the meeting: a local server that shows one line, lets people change it, and answers at once.
 *
 * <p>Main types: {@link runthrough.web.PageServer} serves; {@code PageScenario} is a scenario as it stands on the page; {@code
 * LineView}, {@code AnswerView} and {@code CourseView} are what the page is given; {@code JobRoutes} begin what takes longer, {@code Dropped} says
 * what a file is. The
 * page itself is in the resources of this package.
 *
 * <p>The page holds the scenario as text, and the server keeps nothing of it: each request brings the whole text with the
 * files that it names, and changes are written into it where they belong. Numbers are SI; beside them stand words in the units that the page asks for.
 *
 * <p>Invariants: who is answered is the matter of {@code gate}; the server runs
 * a bounded number of computations at once, each for a bounded time.
 */
@NullMarked
package runthrough.web;

import org.jspecify.annotations.NullMarked;
