package pondtally.reports.fault;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * In a machine started with {@code -Djava.nio.file.spi.DefaultFileSystemProvider}, every call that
 * writes asks {@link WriteFaults} first. What writes through {@code java.io.File} is not seen.
 */
public final class FaultyProvider extends FileSystemProvider {

  private final FileSystemProvider real;
  private final FaultyFileSystem files;

  /** Called by the machine with its own provider. */
  public FaultyProvider(FileSystemProvider real) {
    this.real = real;
    this.files = new FaultyFileSystem(real.getFileSystem(URI.create("file:///")), this);
  }

  private static Path real(Path path) {
    return FaultyPath.real(path);
  }

  @Override
  public String getScheme() {
    return "file";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) throws IOException {
    return real.newFileSystem(uri, environment);
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return files;
  }

  @Override
  public Path getPath(URI uri) {
    return FaultyPath.wrap(real.getPath(uri), files);
  }

  // Calls that write

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    boolean writes =
        options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
    if (!writes) {
      return real.newByteChannel(real(path), options, attributes);
    }
    WriteFaults.call("open", path);
    return new FaultyChannel(real.newByteChannel(real(path), options, attributes), path);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (options.contains(StandardOpenOption.WRITE)) {
      WriteFaults.call("open", path);
    }
    return real.newFileChannel(real(path), options, attributes);
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    WriteFaults.call("folder", folder);
    real.createDirectory(real(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    WriteFaults.call("delete", path);
    real.delete(real(path));
  }

  @Override
  public void move(Path source, Path target, CopyOption... options) throws IOException {
    WriteFaults.call("move", source);
    real.move(real(source), real(target), options);
  }

  /** Piece by piece, so that it can fail in the middle. */
  @Override
  public void copy(Path source, Path target, CopyOption... options) throws IOException {
    if (options.length > 0) {
      WriteFaults.call("open", target);
      real.copy(real(source), real(target), options);
      return;
    }
    try (InputStream in = newInputStream(source);
        OutputStream out =
            newOutputStream(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      in.transferTo(out);
    }
  }

  @Override
  public void setAttribute(Path path, String attribute, Object value, LinkOption... options)
      throws IOException {
    WriteFaults.call("attribute", path);
    real.setAttribute(real(path), attribute, value, options);
  }

  // Calls that read

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    DirectoryStream<Path> stream =
        real.newDirectoryStream(real(folder), path -> filter.accept(FaultyPath.wrap(path, files)));
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        return StreamSupport.stream(stream.spliterator(), false)
            .map(path -> FaultyPath.wrap(path, files))
            .iterator();
      }

      @Override
      public void close() throws IOException {
        stream.close();
      }
    };
  }

  @Override
  public boolean isSameFile(Path path, Path other) throws IOException {
    return real.isSameFile(real(path), real(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return real.isHidden(real(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return real.getFileStore(real(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    real.checkAccess(real(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return real.getFileAttributeView(real(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return real.readAttributes(real(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options)
      throws IOException {
    return real.readAttributes(real(path), attributes, options);
  }

  @Override
  public Path readSymbolicLink(Path link) throws IOException {
    return FaultyPath.wrap(real.readSymbolicLink(real(link)), files);
  }
}
