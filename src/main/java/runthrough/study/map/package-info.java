/**
 * Where, over two numbers of the line, does it run through its coil changes?
 *
 * <p>Main types: {@link runthrough.study.map.MapStudy} (runs it), {@link runthrough.study.map.MapPlan} (the two axes and how
 * finely), {@link runthrough.study.map.MapVariants} (from two numbers to a line, given by the caller, for the study knows no
 * scenario), {@link runthrough.study.map.ShareMap} (the answer), {@link runthrough.study.map.Field} (numbers over the map and
 * their contours).
 *
 * <p>Units: SI along the axes. Shares are in [0, 1].
 *
 * <p>Invariants: all points are run under the same random numbers; the same line, plan and seed give the same map, whatever the number
 * of threads and however often it was interrupted and taken up again. Points are refined level by level: which come next
 * depends on all points of the level before, never on which were done first.
 */
@NullMarked
package runthrough.study.map;

import org.jspecify.annotations.NullMarked;
