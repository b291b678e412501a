package pondtally.analysis;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.BuildSpecification;
import pondtally.history.PipeType;
import pondtally.record.Code;
import pondtally.record.Install;
import pondtally.record.Site;

/**
 * Which groups a device, or one service life of it, belongs to: exactly one of each grouping. Not
 * for use by several threads at once.
 */
public final class Groups {

  private final Map<Grouping, Map<String, GroupKey>> keys = new EnumMap<>(Grouping.class);
  private final Map<String, Map<String, GroupKey>> pipesInWatersheds = new HashMap<>();
  private final Map<Integer, String> years = new HashMap<>();

  /**
   * The watershed group of a code that is shorter than the level at which watersheds are compared.
   */
  public static final String COARSER = "coarser";

  private final int watershedDigits;

  public Groups(int watershedDigits) {
    this.watershedDigits = watershedDigits;
  }

  /**
   * The groups of a service life.
   *
   * @param design install record whose design it has
   * @param openedOn day it began, days since 1970-01-01
   */
  public List<GroupKey> of(Install design, Site site, int openedOn) {
    String pipe = PipeType.of(design);
    String watershed = watershed(site);
    return List.of(
        GroupKey.ALL,
        key(Grouping.PIPE, pipe),
        key(Grouping.KIND, code(design.deviceKind())),
        key(Grouping.WATERSHED, watershed),
        pipesInWatersheds
            .computeIfAbsent(watershed, w -> new HashMap<>())
            .computeIfAbsent(
                pipe, p -> new GroupKey(Grouping.PIPE_IN_WATERSHED, watershed + " / " + p)),
        key(Grouping.CREW, text(design.crew())),
        key(
            Grouping.COHORT,
            years.computeIfAbsent(
                LocalDate.ofEpochDay(openedOn).getYear(), year -> Integer.toString(year))),
        key(Grouping.BUILD, BuildSpecification.judge(design).group().code()),
        key(Grouping.SETTING, code(site.setting())));
  }

  /** One and the same key for equal groups, so that looking a group up is cheap. */
  GroupKey key(Grouping grouping, String group) {
    return keys.computeIfAbsent(grouping, g -> new HashMap<>())
        .computeIfAbsent(group, g -> new GroupKey(grouping, g));
  }

  /** The groups of a device as it was first installed. */
  public List<GroupKey> of(Install install, Site site) {
    return of(install, site, install.installedOn());
  }

  /** The watershed group of a site. */
  public String watershed(Site site) {
    String code = site.watershed();
    if (code == null) {
      return GroupKey.UNKNOWN;
    }
    if (!code.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return code;
    }
    return code.length() < watershedDigits ? COARSER : code.substring(0, watershedDigits);
  }

  /** The setting group of a site. */
  public static String setting(Site site) {
    return code(site.setting());
  }

  private static String code(Code code) {
    return code == null ? GroupKey.UNKNOWN : code.code();
  }

  private static String text(String text) {
    return text == null ? GroupKey.UNKNOWN : text;
  }
}
