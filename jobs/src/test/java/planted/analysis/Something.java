package planted.analysis;

/** What a record must not know. */
public final class Something {}
