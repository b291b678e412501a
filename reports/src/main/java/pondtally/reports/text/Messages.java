package pondtally.reports.text;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/**
 * Sentences and labels from {@code messages.properties}, in the pattern language of ICU
 * MessageFormat, so that each language has its own word order and its own plural forms. Another
 * language is another file beside it, {@code messages_fr.properties}; what it lacks is taken from
 * the English one. The machine's language has no part in it.
 */
public final class Messages {

  private static final String BUNDLE = "pondtally.reports.text.messages";
  private static final Messages ENGLISH = new Messages(Locale.ENGLISH);

  private final Locale locale;
  private final ResourceBundle bundle;

  private Messages(Locale locale) {
    this.locale = locale;
    bundle =
        ResourceBundle.getBundle(
            BUNDLE,
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** The language of the reports. */
  public static Messages english() {
    return ENGLISH;
  }

  /** Another language, as far as there is a file for it. */
  public static Messages in(Locale locale) {
    return new Messages(locale);
  }

  /** The message without places to fill. */
  public String text(String key) {
    return text(key, Map.of());
  }

  /**
   * The message with its places filled.
   *
   * @param arguments texts, and whole numbers that choose a plural form, by the name of the place
   * @throws java.util.MissingResourceException where no language has the message
   */
  public String text(String key, Map<String, Object> arguments) {
    return new MessageFormat(bundle.getString(key), ULocale.forLocale(locale)).format(arguments);
  }

  /** Whether there is such a message. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }
}
