package planted.table;

/** Stands for the layer. */
public final class Present {}
