package pondtally.reports.fault;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;

/** A file open for writing: a write that fails leaves half of its bytes. */
final class FaultyChannel implements SeekableByteChannel {

  private final SeekableByteChannel file;
  private final Path path;

  FaultyChannel(SeekableByteChannel file, Path path) {
    this.file = file;
    this.path = path;
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    if (WriteFaults.fails("write", path)) {
      bytes.limit(bytes.position() + bytes.remaining() / 2);
      file.write(bytes);
      throw WriteFaults.ofWrite();
    }
    return file.write(bytes);
  }

  @Override
  public void close() throws IOException {
    boolean wasOpen = file.isOpen();
    file.close();
    if (wasOpen) {
      WriteFaults.call("close", path);
    }
  }

  @Override
  public SeekableByteChannel truncate(long size) throws IOException {
    WriteFaults.call("truncate", path);
    file.truncate(size);
    return this;
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    return file.read(bytes);
  }

  @Override
  public long position() throws IOException {
    return file.position();
  }

  @Override
  public SeekableByteChannel position(long position) throws IOException {
    file.position(position);
    return this;
  }

  @Override
  public long size() throws IOException {
    return file.size();
  }

  @Override
  public boolean isOpen() {
    return file.isOpen();
  }
}
