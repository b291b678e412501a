package planted.check;

/** Stands for the layer. */
public final class Present {}
