/**
 * The document that goes into a grant application: headings, sentences, tables and pictures that a
 * person pastes from. Its words and figures come from {@code view}; here they only become a file.
 */
package pondtally.reports.document;
