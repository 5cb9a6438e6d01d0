/**
 * Sensitivity of the answer: inputs moved one at a time, and the shares that the sources of randomness have in the variance.
 *
 * <p>Main types: {@link runthrough.study.sensitivity.SensitivityStudy} makes a {@link
 * runthrough.study.sensitivity.Sensitivity}, of {@link runthrough.study.sensitivity.SwingEffect}s and {@link
 * runthrough.study.sensitivity.VarianceShares}. Units: SI; shares and indices from 0 to 1.
 *
 * <p>Invariants: what is compared met the same random numbers, coil change by coil change. What is not shown to matter is distinguished
 * from what is. The variants of the line are handed in: nothing here knows a scenario file.
 */
@NullMarked
package runthrough.study.sensitivity;

import org.jspecify.annotations.NullMarked;
