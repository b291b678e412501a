package pondtally.check;

import java.io.Serializable;

/**
 * What messages and tables call an input file.
 *
 * @param path below the program folder, with {@code /}
 * @param partner who sent it; empty for a file in the program folder itself
 */
public record FileName(String path, String partner) implements Serializable {}
