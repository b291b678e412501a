package pondtally.record;

import java.io.Serializable;

/** A record that remembers the row it was read from and the partner who sent it. */
public sealed interface Sourced extends Serializable
    permits Area, Budget, Expense, Install, MaterialLine, Property, Removal, Request, Site, Visit {

  /** The place of the row in the input files. */
  Origin origin();

  /**
   * The partner whose row it is: the first folder below the program folder, or the row's own {@code
   * partner}.
   */
  String partner();
}
