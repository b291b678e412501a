package pondtally.reports.form;

import pondtally.reports.text.Messages;

/** Whether a row can do without the field. The mark stands behind the heading. */
public enum FormNeed {
  /** No row counts without it. */
  NEEDED("\u00a0*", Messages.of("form.FormNeed.needed")),
  /** A row needs one of the fields so marked. */
  ONE_OF("\u00a0†", Messages.of("form.FormNeed.one-of-these")),
  /** May stay empty. */
  OPTIONAL("", Messages.of("form.FormNeed.optional"));

  private final String mark;
  private final String word;

  FormNeed(String mark, String word) {
    this.mark = mark;
    this.word = word;
  }

  String mark() {
    return mark;
  }

  String word() {
    return word;
  }
}
