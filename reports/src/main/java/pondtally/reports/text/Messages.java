package pondtally.reports.text;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences and labels from {@code messages.properties}, in the pattern language of ICU
 * MessageFormat, so that each language has its own word order and its own plural forms. Another
 * language is another file beside it, {@code messages_fr.properties}, and {@link #LANGUAGE}; what
 * it lacks is taken from the English one. The machine's language has no part in it.
 */
public final class Messages {

  /** System property with the language tag of the reports; English where it is not set. */
  public static final String LANGUAGE = "pondtally.language";

  private static final String BUNDLE = "pondtally.reports.text.messages";
  private static final Messages ENGLISH = new Messages(Locale.ENGLISH);
  private static final Messages REPORTS =
      new Messages(Locale.forLanguageTag(System.getProperty(LANGUAGE, "en")));

  private static final PluralRules PLURALS =
      PluralRules.forLocale(ULocale.forLocale(REPORTS.locale));

  /** A place that chooses or formats, or a quoted brace: what ICU is needed for. */
  private static final Pattern CHOOSES = Pattern.compile("\\{\\w+,|'[{}]");

  private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

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

  /** English, whatever the language of the reports. */
  public static Messages english() {
    return ENGLISH;
  }

  /** The language of the reports, the same from the start of the program to its end. */
  public static Messages reports() {
    return REPORTS;
  }

  /** A message of the reports without places to fill. */
  public static String of(String key) {
    return REPORTS.text(key);
  }

  /**
   * A message of the reports with its places filled.
   *
   * @param arguments as in {@link #text(String, Map)}
   */
  public static String of(String key, Map<String, ?> arguments) {
    return REPORTS.text(key, arguments);
  }

  /** Another language, as far as there is a file for it. */
  public static Messages in(Locale locale) {
    return new Messages(locale);
  }

  /** A message of the reports, or {@code otherwise} where no language has it. */
  public static String or(String key, String otherwise) {
    return REPORTS.has(key) ? REPORTS.text(key) : otherwise;
  }

  /** The noun that goes with a number, in the form that the language of the reports asks for. */
  static String things(String plural, double number) {
    String unit = "unit." + plural.replace(' ', '-');
    String form = unit + "." + PLURALS.select(number);
    return or(REPORTS.has(form) ? form : unit + ".other", plural);
  }

  /** Which language. */
  public Locale locale() {
    return locale;
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
  public String text(String key, Map<String, ?> arguments) {
    String pattern = bundle.getString(key);
    return CHOOSES.matcher(pattern).find()
        ? new MessageFormat(pattern, ULocale.forLocale(locale)).format(new HashMap<>(arguments))
        : filled(pattern, arguments);
  }

  /**
   * Most messages only have texts to fill in; ICU takes seconds to start for a thousand of them.
   */
  private static String filled(String pattern, Map<String, ?> arguments) {
    Matcher place = PLACE.matcher(pattern.replace("''", "'"));
    StringBuilder text = new StringBuilder();
    while (place.find()) {
      Object argument = arguments.get(place.group(1));
      String shown = argument == null ? place.group() : argument.toString();
      place.appendReplacement(text, Matcher.quoteReplacement(shown));
    }
    return place.appendTail(text).toString();
  }

  /** Whether there is such a message. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }
}
