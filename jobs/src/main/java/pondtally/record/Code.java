package pondtally.record;

import java.util.Optional;

/** A value from a closed list, written in files by its code. */
public interface Code {

  /** The code as it stands in files and tables, for example {@code pond-leveler}. */
  String code();

  /** The constant of {@code type} whose code is {@code text}, exactly; empty when there is none. */
  static <E extends Enum<E> & Code> Optional<E> find(Class<E> type, String text) {
    for (E constant : type.getEnumConstants()) {
      if (constant.code().equals(text)) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }
}
