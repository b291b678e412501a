package planted.stage;

/** Stands for the layer. */
public final class Present {}
