package pondtally.record;

/**
 * A cost of the program that belongs to no device.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param date days since 1970-01-01
 * @param kind what it was for
 * @param usd nominal dollars; null: miles only
 * @param miles miles driven; null: none recorded
 * @param paidBy a funder, or {@code in-kind}; null: not recorded
 * @param matchFor award that an in-kind value is claimed against; null: unclaimed
 */
public record Expense(
    Origin origin,
    String partner,
    int date,
    ExpenseKind kind,
    Double usd,
    Double miles,
    String paidBy,
    String matchFor)
    implements Sourced {}
