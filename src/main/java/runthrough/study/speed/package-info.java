/**
 * What comes out of the line when the process is run slower or faster?
 *
 * <p>Main types: {@link runthrough.study.speed.SpeedStudy} (runs it), {@link runthrough.study.speed.SpeedRange} (what is
 * asked), {@link runthrough.study.speed.SpeedCurve} (the answer), {@link runthrough.study.speed.SpeedPoint} (one
 * speed).
 *
 * <p>Units: SI; rates are "per shift", a shift being 8 h of simulated time. Shares are in [0, 1].
 *
 * <p>Invariants: all speeds are tried under the same random numbers; the same line, plan and seed give the same answer, whatever the
 * number of threads.
 */
@NullMarked
package runthrough.study.speed;

import org.jspecify.annotations.NullMarked;
