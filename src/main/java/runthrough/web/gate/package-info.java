/**
 * Who is answered: what is read of a request before anybody looks at it ({@link runthrough.web.gate.WholeRequests}), from where
 * requests may come ({@link runthrough.web.gate.Access}), and what every answer says to the browser ({@link
 * runthrough.web.gate.Guard}).
 *
 * <p>Invariants: without an explicit wish the server is there for this machine alone; where it is open to the local network, only
 * who has the link with its token is answered.
 */
@NullMarked
package runthrough.web.gate;

import org.jspecify.annotations.NullMarked;
