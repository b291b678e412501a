package planted.intake;

/** Stands for the layer. */
public final class Present {}
