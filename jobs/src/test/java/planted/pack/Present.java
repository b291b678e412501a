package planted.pack;

/** Stands for the layer. */
public final class Present {}
