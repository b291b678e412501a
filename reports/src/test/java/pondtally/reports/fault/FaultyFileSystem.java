package pondtally.reports.fault;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The machine's own file system under the failing provider. */
final class FaultyFileSystem extends FileSystem {

  private final FileSystem real;
  private final FaultyProvider provider;

  FaultyFileSystem(FileSystem real, FaultyProvider provider) {
    this.real = real;
    this.provider = provider;
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException("the machine's own file system stays open");
  }

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return real.isReadOnly();
  }

  @Override
  public String getSeparator() {
    return real.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    List<Path> roots = new ArrayList<>();
    real.getRootDirectories().forEach(root -> roots.add(FaultyPath.wrap(root, this)));
    return roots;
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return real.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return real.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return FaultyPath.wrap(real.getPath(first, more), this);
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = real.getPathMatcher(pattern);
    return path -> matcher.matches(FaultyPath.real(path));
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return real.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() throws IOException {
    return real.newWatchService();
  }
}
