package pondtally.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/**
 * A generated file that looks much like a partner's and is wrong in many ways; the same for the
 * same seed.
 */
record HostileFile(String name, byte[] bytes) {

  static final String[] CELLS = {
    "D1",
    "S1",
    "2024-05-01",
    "31/02/2024",
    "03/04/2024",
    "13/04/2024",
    "12",
    "12\"",
    "1,234",
    "1.234,5",
    "380 mm",
    "$12",
    "yes",
    "no",
    "maybe",
    "dual",
    "Pond Leveler",
    "pluged",
    "",
    " ",
    "n/a",
    "#N/A",
    "=1+1",
    "-5",
    "1e9",
    "9.9E+10",
    "99010203.0",
    "Total",
    "\"",
    "\"a\"\"b\"",
    "\"a,b\"",
    "\"a\nb\"",
    "\"open",
    "x\"y",
    "é",
    "\u0000",
    "\u202e",
    "(1,200.00)",
    "20' 6\"",
    "2024",
    "working",
    "failed",
    "pipe",
    "\t",
    ";",
    "'",
    "0x1F",
    "NaN",
    "Infinity",
    "١٢",
    "−5",
    "1 234",
    "99999999999999999999999999",
    ".",
    "-",
    "$",
    "1970-01-01T00:00",
    "00/00/0000"
  };

  private static final byte[] WORKBOOK = workbook();

  /** Of every kind: text in three encodings, damaged text, random bytes, damaged workbooks. */
  static HostileFile of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String name = pick(random, "x.csv", "installs.csv", "revisits.csv", "sites.tsv");
    return switch ((int) Math.floorMod(seed, 10)) {
      case 0 -> new HostileFile(name, text(random).getBytes(StandardCharsets.ISO_8859_1));
      case 1 ->
          new HostileFile(name, ("\ufeff" + text(random)).getBytes(StandardCharsets.UTF_16LE));
      case 2, 3 ->
          new HostileFile(name, damaged(random, text(random).getBytes(StandardCharsets.UTF_8)));
      case 4 -> new HostileFile(name, randomBytes(random));
      case 5 -> new HostileFile("installs.xlsx", damagedWorkbook(random));
      default -> new HostileFile(name, text(random).getBytes(StandardCharsets.UTF_8));
    };
  }

  private static String pick(SplittableRandom random, String... from) {
    return from[random.nextInt(from.length)];
  }

  private static String headings(SplittableRandom random, TableSchema table, char separator) {
    StringBuilder line = new StringBuilder();
    for (FieldSchema field : table.fields()) {
      if (field.required() || random.nextInt(3) > 0) {
        line.append(line.isEmpty() ? "" : String.valueOf(separator));
        line.append(
            field.synonyms().isEmpty() || random.nextBoolean()
                ? field.name()
                : field.synonyms().get(random.nextInt(field.synonyms().size())));
        line.append(random.nextInt(20) == 0 ? " (mm)" : "");
      }
    }
    return line.toString();
  }

  static String text(SplittableRandom random) {
    TableSchema table = TableSchema.all().get(random.nextInt(TableSchema.all().size()));
    char separator = pick(random, ",", ",", ";", "\t", "|").charAt(0);
    String end = pick(random, "\n", "\r\n", "\r");
    StringBuilder text = new StringBuilder();
    String headings = headings(random, table, separator);
    text.append(random.nextInt(10) == 0 ? "A title" + end + end : "").append(headings).append(end);
    int width = headings.split(separator == '|' ? "\\|" : String.valueOf(separator), -1).length;
    for (int row = random.nextInt(30); row > 0; row--) {
      int cells = random.nextInt(8) > 0 ? width : random.nextInt(width + 3);
      for (int i = 0; i < cells; i++) {
        text.append(i == 0 ? "" : String.valueOf(separator)).append(pick(random, CELLS));
      }
      text.append(end);
    }
    return text.toString();
  }

  static byte[] randomBytes(SplittableRandom random) {
    byte[] bytes = new byte[random.nextInt(3000)];
    random.nextBytes(bytes);
    for (int i = 0; i < bytes.length && random.nextInt(4) > 0; i++) {
      bytes[i] = bytes[i] == 0 ? (byte) ',' : bytes[i];
    }
    return bytes;
  }

  static byte[] damagedWorkbook(SplittableRandom random) {
    byte[] bytes = damaged(random, WORKBOOK.clone());
    return random.nextInt(10) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
  }

  static byte[] damaged(SplittableRandom random, byte[] bytes) {
    for (int i = 1 + random.nextInt(4); i > 0 && bytes.length > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static byte[] workbook() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("installs");
      String[] headings = {"device_id", "site_id", "installed_on", "pipe_wall"};
      String[] values = {"D1", "S1", "2024-05-01", "dual"};
      for (int row = 0; row < 40; row++) {
        sheet.createRow(row);
        for (int i = 0; i < headings.length; i++) {
          sheet.getRow(row).createCell(i).setCellValue(row == 0 ? headings[i] : values[i]);
        }
      }
      book.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
