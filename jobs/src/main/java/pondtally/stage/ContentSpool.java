package pondtally.stage;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;

/**
 * The rows of one task in blocks of limited size, so that a file larger than memory can be read:
 * full blocks wait in a temporary file until they are asked for.
 */
final class ContentSpool implements AutoCloseable {

  /** Spark's stream of objects lets go of what it wrote or read after a hundred of them. */
  private static final long BLOCK_BYTES = 1L << 20;

  private final int partitions;
  private FileContent.Packer packer;
  private Path file;
  private ObjectOutputStream out;
  private int spilled;

  ContentSpool(int partitions) {
    this.partitions = partitions;
    packer = new FileContent.Packer(partitions);
  }

  void add(Sourced row) {
    packer.add(row);
    if (packer.bytes() >= BLOCK_BYTES) {
      try {
        spill(packer.pack(List.of()));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      packer = new FileContent.Packer(partitions);
    }
  }

  private void spill(FileContent block) throws IOException {
    if (out == null) {
      file = Files.createTempFile("pondtally-", ".rows");
      out = new ObjectOutputStream(new BufferedOutputStream(Files.newOutputStream(file)));
    }
    out.writeUnshared(block);
    out.reset();
    spilled++;
  }

  /** All the blocks; the last has the reports. To be asked for once, after the last row. */
  Iterator<FileContent> blocks(List<SheetReport> reports) throws IOException {
    FileContent last = packer.pack(reports);
    packer = null;
    if (out == null) {
      return List.of(last).iterator();
    }
    out.close();
    return new Blocks(
        new ObjectInputStream(new BufferedInputStream(Files.newInputStream(file))), last);
  }

  /** Removes the temporary file. */
  @Override
  public void close() {
    try {
      if (out != null) {
        out.close();
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private final class Blocks implements Iterator<FileContent> {
    private final ObjectInputStream in;
    private FileContent last;

    Blocks(ObjectInputStream in, FileContent last) {
      this.in = in;
      this.last = last;
    }

    @Override
    public boolean hasNext() {
      return last != null;
    }

    @Override
    public FileContent next() {
      try {
        if (spilled-- > 0) {
          return (FileContent) in.readUnshared();
        }
        in.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (ClassNotFoundException e) {
        throw new IllegalStateException(e);
      }
      if (last == null) {
        throw new NoSuchElementException();
      }
      FileContent block = last;
      last = null;
      return block;
    }
  }
}
