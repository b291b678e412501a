/**
 * What happened to each device, site and pond: lives, failures, restarts, ends, functional time,
 * wetland area. Rules only; dollars and estimates come later.
 *
 * <p>One class a rule, in the order in which {@link pondtally.history.Histories} applies them:
 * visits of one day ({@code SameDayRule}), cutting into service lives ({@code ServiceRule}), entry
 * ({@code EntryRule}), failure and restart ({@code FailureRule}, {@code RestartRule}), end and
 * follow-up ({@code EndRule}, {@code LifeRule}), functional time ({@code FunctionRule}), state
 * ({@code StateRule}); then sites ({@code SiteRule}), ponds ({@code PondRule}, {@code AreaRule},
 * {@code AbandonmentRule}) and properties ({@code PropertyRule}).
 */
package pondtally.history;
