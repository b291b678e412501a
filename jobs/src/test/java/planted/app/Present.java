package planted.app;

/** Stands for the layer. */
public final class Present {}
