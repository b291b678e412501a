package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The sockets of a process as Linux lists them: proc(5), {@code /proc/net/tcp} and its kin. */
final class OpenPorts {

  private static final Pattern SOCKET = Pattern.compile("socket:\\[(\\d+)]");

  /** 127.0.0.0/8, the same as an IPv6 address, and ::1: words with the lowest byte first. */
  private static final Pattern LOOPBACK =
      Pattern.compile("(0{16}F{4}0000)?[0-9A-F]{6}7F|0{24}01000000");

  private static final String ANY_ADDRESS = "0*";

  private OpenPorts() {}

  /** A socket: its protocol, both addresses in hexadecimal, its state and number. */
  record Socket(String protocol, String local, String remote, String inode) {

    /** Whether another machine can reach it, or it reaches another machine. */
    boolean isBeyondLoopback() {
      boolean isConnected = !remote.matches(ANY_ADDRESS);
      return !isLoopback(local) || (isConnected && !isLoopback(remote));
    }

    private static boolean isLoopback(String address) {
      return LOOPBACK.matcher(address).matches();
    }
  }

  /** Every internet socket that the process holds; empty when it has ended. */
  static List<Socket> of(ProcessHandle process) {
    Set<String> held = inodes(process.pid());
    List<Socket> found = new ArrayList<>();
    for (String protocol : List.of("tcp", "tcp6", "udp", "udp6")) {
      for (Socket socket : listed(process.pid(), protocol)) {
        if (held.contains(socket.inode())) {
          found.add(socket);
        }
      }
    }
    return found;
  }

  private static Set<String> inodes(long pid) {
    Set<String> inodes = new HashSet<>();
    try (Stream<Path> descriptors = Files.list(Path.of("/proc", Long.toString(pid), "fd"))) {
      for (Path descriptor : descriptors.toList()) {
        addSocket(inodes, descriptor);
      }
    } catch (IOException | UncheckedIOException e) {
      return inodes; // it has ended
    }
    return inodes;
  }

  private static void addSocket(Set<String> inodes, Path descriptor) {
    try {
      Matcher socket = SOCKET.matcher(Files.readSymbolicLink(descriptor).toString());
      if (socket.matches()) {
        inodes.add(socket.group(1));
      }
    } catch (IOException e) {
      return; // closed meanwhile
    }
  }

  private static List<Socket> listed(long pid, String protocol) {
    try {
      return Files.readAllLines(Path.of("/proc", Long.toString(pid), "net", protocol)).stream()
          .skip(1)
          .map(line -> line.strip().split("\\s+"))
          .map(part -> new Socket(protocol, address(part[1]), address(part[2]), part[9]))
          .toList();
    } catch (IOException | UncheckedIOException e) {
      return List.of();
    }
  }

  private static String address(String withPort) {
    return withPort.substring(0, withPort.indexOf(':'));
  }
}
