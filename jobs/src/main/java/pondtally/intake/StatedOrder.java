package pondtally.intake;

/**
 * An order of dates that does not have to be found out.
 *
 * @param order the order
 * @param by who states it, for messages
 */
record StatedOrder(DateOrder order, String by) {

  /** For messages, as {@code day/month/year, as the heading says}. */
  String words() {
    return order.words() + ", as " + by + " says";
  }
}
