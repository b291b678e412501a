/** Forms that partners fill in: the empty workbook, and what cells of a field may hold. */
package pondtally.reports.form;
