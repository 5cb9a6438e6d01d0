/**
 * What an alternative is worth: hours, tonnes, scrap and crew time of a year against the line called today, and, from what the
 * user says that these are worth, payback, present value and rate of return.
 *
 * <p>Main types: {@link runthrough.study.benefit.CashFlow} (money year by year, and what it comes to), {@link
 * runthrough.study.benefit.Benefit} (an alternative's gain of a year with its interval, and its cash flow).
 *
 * <p>Units: SI for what is simulated; money in the user's currency, years for time. Convention: the first flow is at time zero
 * and is not discounted; those of a year come at its end. A spreadsheet's function for the present value usually takes its
 * first flow at the end of the first year, and so gives less.
 *
 * <p>Source: S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual for the Federal Energy Management Program, NIST
 * Handbook 135, 1995: single and uniform present value factors, net savings, payback.
 */
@NullMarked
package runthrough.study.benefit;

import org.jspecify.annotations.NullMarked;
