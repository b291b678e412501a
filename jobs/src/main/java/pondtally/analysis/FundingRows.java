package pondtally.analysis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.FundingPeriods.Period;
import pondtally.analysis.FundingTally.Booking;
import pondtally.record.Budget;
import pondtally.record.Expense;
import pondtally.stats.ExactSum;

/**
 * The result table {@code funding}: nominal dollars by funder and budget period. Cash stands with
 * the funder who paid it; in-kind and volunteer value with the award it is claimed against. Match
 * is in-kind and volunteer value and other funders' cash claimed against the award (2 CFR 200.306
 * sets what a federal award allows; it is not judged here).
 */
public final class FundingRows {

  /** Stands for the funder of value that is claimed against no award. */
  public static final String UNCLAIMED = "unclaimed";

  /** Stands for the funder of cash that no row names a payer for. */
  public static final String UNASSIGNED = "unassigned";

  private FundingRows() {}

  /** One row of the result table. Dates are days since 1970-01-01; dollars are nominal. */
  public record Row(
      String funder,
      Integer periodStart,
      Integer periodEnd,
      Double cashUsd,
      Double inKindUsd,
      Double volunteerUsd,
      Double awardUsd,
      Double matchRequiredUsd,
      Boolean matchMet,
      Double matchCashUsd,
      Double matchClaimedUsd) {}

  private static final class Sums {
    private final ExactSum cash = new ExactSum();
    private final ExactSum inKind = new ExactSum();
    private final ExactSum volunteer = new ExactSum();
    private final ExactSum matchCash = new ExactSum();

    private ExactSum of(ContributionSubject subject) {
      return switch (subject) {
        case FUNDING_CASH_USD -> cash;
        case FUNDING_IN_KIND_USD -> inKind;
        case FUNDING_VOLUNTEER_USD -> volunteer;
        case FUNDING_MATCH_CASH_USD -> matchCash;
        default -> throw new IllegalArgumentException(subject.code());
      };
    }
  }

  /** The rows of the result table: one for each budget, and for each funder outside any. */
  public static List<Row> rows(
      FundingTally tally, List<Budget> budgets, List<Expense> expenses, AnalysisSettings settings) {
    FundingPeriods periods = new FundingPeriods(budgets);
    SortedMap<Period, Sums> sums = new TreeMap<>();
    periods.all().forEach(period -> sums.put(period, new Sums()));
    tally.with(expenses).sums().forEach((booking, usd) -> addBooking(sums, periods, booking, usd));
    boolean valued = settings.volunteerRateUsd() != null;
    return sums.entrySet().stream()
        .map(e -> row(e.getKey(), e.getValue(), periods, valued))
        .toList();
  }

  private static void addBooking(
      SortedMap<Period, Sums> sums, FundingPeriods periods, Booking booking, ExactSum usd) {
    shares(booking.payment(), booking.payer(), booking.matchFor())
        .forEach(
            (subject, funder) ->
                sums.computeIfAbsent(periods.of(funder, booking.day()), p -> new Sums())
                    .of(subject)
                    .merge(usd));
  }

  /**
   * The column that a payment counts in, and the funder it stands with; cash of another funder
   * claimed against an award stands there too, as match.
   */
  static Map<ContributionSubject, String> shares(Payment payment, String payer, String matchFor) {
    Map<ContributionSubject, String> shares = new EnumMap<>(ContributionSubject.class);
    if (payment == Payment.CASH) {
      shares.put(ContributionSubject.FUNDING_CASH_USD, payer == null ? UNASSIGNED : payer);
      if (matchFor != null && !matchFor.equals(payer)) {
        shares.put(ContributionSubject.FUNDING_MATCH_CASH_USD, matchFor);
      }
    } else {
      shares.put(
          payment == Payment.IN_KIND
              ? ContributionSubject.FUNDING_IN_KIND_USD
              : ContributionSubject.FUNDING_VOLUNTEER_USD,
          matchFor == null ? UNCLAIMED : matchFor);
    }
    return shares;
  }

  private static Row row(Period period, Sums s, FundingPeriods periods, boolean valued) {
    FundingPeriods.Award award = periods.award(period);
    boolean claims = !period.funder().equals(UNCLAIMED) && !period.funder().equals(UNASSIGNED);
    ExactSum claimed = new ExactSum().merge(s.inKind).merge(s.volunteer).merge(s.matchCash);
    return new Row(
        period.funder(),
        period.from(),
        period.to(),
        s.cash.result(),
        s.inKind.result(),
        valued ? (Double) s.volunteer.result() : null,
        award.awardUsd(),
        award.matchRequiredUsd(),
        matchMet(claimed.result(), award.matchRequiredUsd(), valued),
        s.matchCash.result(),
        claims ? (Double) claimed.result() : null);
  }

  /**
   * Null where no match is required, and where unvalued volunteer hours could still make up for
   * what is missing.
   */
  private static Boolean matchMet(double claimedUsd, Double requiredUsd, boolean valued) {
    if (requiredUsd == null || requiredUsd == 0) {
      return null;
    }
    boolean met = claimedUsd >= requiredUsd;
    return met || valued ? (Boolean) met : null;
  }
}
