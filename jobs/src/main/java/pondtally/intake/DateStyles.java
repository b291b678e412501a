package pondtally.intake;

import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Which cell styles of a workbook show numbers as dates. */
final class DateStyles {

  private final boolean[] isDate;

  /**
   * @param styles null: the workbook has none
   */
  DateStyles(StylesTable styles) {
    isDate = new boolean[styles == null ? 0 : styles.getNumCellStyles()];
    for (int i = 0; i < isDate.length; i++) {
      XSSFCellStyle style = styles.getStyleAt(i);
      isDate[i] = DateUtil.isADateFormat(style.getDataFormat(), style.getDataFormatString());
    }
  }

  boolean isDate(int style) {
    return style >= 0 && style < isDate.length && isDate[style];
  }
}
