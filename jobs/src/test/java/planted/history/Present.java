package planted.history;

/** Stands for the layer. */
public final class Present {}
