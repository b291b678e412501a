package pondtally.reports.fault;

import java.io.File;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Makes a real path one of the failing file system, and back. */
final class FaultyPath implements InvocationHandler {

  private final Path real;
  private final FaultyFileSystem files;

  private FaultyPath(Path real, FaultyFileSystem files) {
    this.real = real;
    this.files = files;
  }

  /** A path that is one already stays one: parts of Java ask for the default file system. */
  static Path wrap(Path real, FaultyFileSystem files) {
    return real == null || Proxy.isProxyClass(real.getClass())
        ? real
        : (Path)
            Proxy.newProxyInstance(
                FaultyPath.class.getClassLoader(),
                new Class<?>[] {Path.class},
                new FaultyPath(real, files));
  }

  static Path real(Path path) {
    return Proxy.isProxyClass(path.getClass())
        ? ((FaultyPath) Proxy.getInvocationHandler(path)).real
        : path;
  }

  @Override
  public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
    return switch (method.getName()) {
      case "getFileSystem" -> files;
      case "toFile" -> new File(real.toString());
      case "iterator" -> parts();
      default -> onReal(method, arguments);
    };
  }

  private Iterator<Path> parts() {
    List<Path> parts = new ArrayList<>();
    real.forEach(part -> parts.add(wrap(part, files)));
    return parts.iterator();
  }

  private Object onReal(Method method, Object[] arguments) throws Throwable {
    Object[] reals = arguments == null ? new Object[0] : arguments.clone();
    for (int i = 0; i < reals.length; i++) {
      reals[i] = reals[i] instanceof Path path ? real(path) : reals[i];
    }
    try {
      Object result = method.invoke(real, reals);
      return result instanceof Path path ? wrap(path, files) : result;
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }
}
