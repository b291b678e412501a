package pondtally.intake;

import java.io.Serializable;

/**
 * One file of a program folder.
 *
 * @param index place in the sorted list of input files
 * @param path below the program folder, with {@code /}; what messages and tables call the file
 * @param location absolute path
 * @param partner first folder below the program folder; empty for a file that lies in the program
 *     folder itself
 */
public record InputFile(int index, String path, String location, String partner)
    implements Serializable {}
