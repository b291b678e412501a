package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * Scores of Gray's test and their variance in one stratum, added up over strata.
 *
 * <p>Notation of Gray 1988: at an age, Y_k lives at risk in group k, S_k the product-limit curve of
 * all ends together, F_k the incidence of the event, h_k = Y_k/S_k(t−), F the incidence common to
 * all groups under the hypothesis, dF = d/Σh. The score of group i is asymptotically a sum of
 * independent terms over groups k, whose weight at an age is a_ik + b (C_ik − c_ik) for an event
 * and b′ (C_ik − c_ik) for a competing end, with a_ik = h_k (1{i=k} − h_i/Σh), c_ik = ∫ a_ik dF/(1
 * − F) up to that age and C_ik to the end, b = 1 − (1 − F)/S_k, b′ = (1 − F)/S_k. Tied ends shrink
 * the variance as in the hypergeometric distribution.
 */
final class GrayStratum {
  private final int groups;
  private final long[] lives;
  private final long[] events;
  private final long[] competing;
  private final double[] expected;
  private final double[] score;
  private final double[][] variance;

  /** What one age contributes by group, kept until C is known. */
  private static final class Age {
    final double[][] direct;
    final double[][] passed;
    final double[] eventWeight;
    final double[] eventShare;
    final double[] otherWeight;
    final double[] otherShare;

    Age(int groups, double[][] passed) {
      this.passed = passed;
      direct = new double[groups][groups];
      eventWeight = new double[groups];
      eventShare = new double[groups];
      otherWeight = new double[groups];
      otherShare = new double[groups];
    }
  }

  GrayStratum(int groups) {
    this.groups = groups;
    lives = new long[groups];
    events = new long[groups];
    competing = new long[groups];
    expected = new double[groups];
    score = new double[groups];
    variance = new double[groups][groups];
  }

  static GrayStratum of(SortedMap<Double, Map<String, long[]>> ages, List<String> order) {
    GrayStratum stratum = new GrayStratum(order.size());
    List<long[][]> ends = new ArrayList<>();
    ages.values().forEach(byGroup -> ends.add(stratum.tally(byGroup, order)));
    stratum.run(ends);
    return stratum;
  }

  private long[][] tally(Map<String, long[]> byGroup, List<String> order) {
    long[][] ends = new long[groups][3];
    for (int k = 0; k < groups; k++) {
      ends[k] = byGroup.getOrDefault(order.get(k), ends[k]);
      lives[k] += ends[k][0] + ends[k][1] + ends[k][2];
      events[k] += ends[k][1];
      competing[k] += ends[k][2];
    }
    return ends;
  }

  private void run(List<long[][]> ends) {
    long[] atRisk = lives.clone();
    double[] survival = new double[groups];
    Arrays.fill(survival, 1);
    double[] incidence = new double[groups];
    double common = 0;
    double[][] passed = new double[groups][groups];
    List<Age> ages = new ArrayList<>();
    for (long[][] end : ends) {
      long event = 0;
      long other = 0;
      for (long[] e : end) {
        event += e[1];
        other += e[2];
      }
      if (event + other > 0) {
        Moment moment = new Moment(end, event, atRisk, survival, incidence);
        moment.score();
        passed = moment.passed(passed, common);
        common += event / moment.total;
        ages.add(moment.age(passed, common));
        moment.advance();
      }
      for (int k = 0; k < groups; k++) {
        atRisk[k] -= end[k][0] + end[k][1] + end[k][2];
      }
    }
    for (Age age : ages) {
      vary(age, passed);
    }
  }

  private void vary(Age age, double[][] all) {
    for (int k = 0; k < groups; k++) {
      for (int i = 0; i < groups; i++) {
        for (int j = 0; j < groups; j++) {
          double restI = all[i][k] - age.passed[i][k];
          double restJ = all[j][k] - age.passed[j][k];
          double b = age.eventShare[k];
          variance[i][j] +=
              age.eventWeight[k] * (age.direct[i][k] + b * restI) * (age.direct[j][k] + b * restJ);
          variance[i][j] +=
              age.otherWeight[k] * age.otherShare[k] * restI * age.otherShare[k] * restJ;
        }
      }
    }
  }

  /**
   * One age with at least one end other than censoring; survival and incidence are those just
   * before it.
   */
  private final class Moment {
    private final long[][] end;
    private final long event;
    private final long[] atRisk;
    private final double[] survival;
    private final double[] incidence;
    private final double[] h = new double[groups];
    private double total;

    Moment(long[][] end, long event, long[] atRisk, double[] survival, double[] incidence) {
      this.end = end;
      this.event = event;
      this.atRisk = atRisk;
      this.survival = survival;
      this.incidence = incidence;
      for (int k = 0; k < groups; k++) {
        h[k] = atRisk[k] > 0 ? atRisk[k] / survival[k] : 0;
        total += h[k];
      }
    }

    void score() {
      double reachable = 0;
      for (int k = 0; k < groups; k++) {
        reachable += h[k] * (1 - incidence[k]);
      }
      for (int k = 0; k < groups; k++) {
        double fair = event == 0 ? 0 : event * h[k] * (1 - incidence[k]) / reachable;
        expected[k] += fair;
        score[k] += end[k][1] - fair;
      }
    }

    private double direct(int i, int k) {
      return h[k] * ((i == k ? 1 : 0) - h[i] / total);
    }

    /** c_ik up to and on this age. */
    double[][] passed(double[][] before, double common) {
      double[][] passed = new double[groups][groups];
      for (int i = 0; i < groups; i++) {
        for (int k = 0; k < groups; k++) {
          passed[i][k] = before[i][k] + direct(i, k) * event / (total * (1 - common));
        }
      }
      return passed;
    }

    Age age(double[][] passed, double common) {
      Age age = new Age(groups, passed);
      for (int k = 0; k < groups; k++) {
        if (atRisk[k] > 0) {
          double y = atRisk[k];
          double after = survivalAfter(k);
          double share = after > 0 ? (1 - common) / after : 0;
          double ties = event > 1 ? 1 - (event - 1) / (total * survival[k] - 1) : 1;
          age.eventWeight[k] = ties * survival[k] * event / (total * y);
          age.eventShare[k] = 1 - share;
          long other = end[k][2];
          double otherTies = other > 1 ? 1 - (other - 1) / (y - 1) : 1;
          age.otherWeight[k] =
              after > 0 ? otherTies * survival[k] * survival[k] * other / (y * y) : 0;
          age.otherShare[k] = share;
          for (int i = 0; i < groups; i++) {
            age.direct[i][k] = direct(i, k);
          }
        }
      }
      return age;
    }

    private double survivalAfter(int k) {
      long left = atRisk[k] - end[k][1] - end[k][2];
      return left == 0 ? 0 : survival[k] * left / atRisk[k];
    }

    void advance() {
      for (int k = 0; k < groups; k++) {
        if (atRisk[k] > 0) {
          incidence[k] += survival[k] * end[k][1] / atRisk[k];
          survival[k] = survivalAfter(k);
        }
      }
    }
  }

  void add(GrayStratum other) {
    for (int i = 0; i < groups; i++) {
      lives[i] += other.lives[i];
      events[i] += other.events[i];
      competing[i] += other.competing[i];
      expected[i] += other.expected[i];
      score[i] += other.score[i];
      for (int j = 0; j < groups; j++) {
        variance[i][j] += other.variance[i][j];
      }
    }
  }

  double[] score() {
    return score;
  }

  double[][] variance() {
    return variance;
  }

  List<GrayTest.Group> groups(List<String> order) {
    List<GrayTest.Group> all = new ArrayList<>();
    for (int k = 0; k < groups; k++) {
      all.add(new GrayTest.Group(order.get(k), lives[k], events[k], competing[k], expected[k]));
    }
    return List.copyOf(all);
  }
}
