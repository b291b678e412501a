package planted.schema;

/** Stands for the layer. */
public final class Present {}
