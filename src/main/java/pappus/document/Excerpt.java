package pappus.document;

import java.util.ArrayList;
import java.util.List;

/**
 * Sections of a text for a terminal, of which so much is shown that all of it keeps to so many lines: the longest give
 * up rows first, from their ends, and say so.
 */
public final class Excerpt {
  /** Lines that an answer has at most where not all of it is asked for. */
  public static final int MOST_LINES = 60;

  private final int width;
  private final List<Section> sections = new ArrayList<>();

  /** A heading, and rows of one or more lines. */
  private static final class Section {
    private final String heading;
    private final List<List<String>> rows;
    private final boolean isCounted;
    private int shown;

    Section(String heading, List<List<String>> rows, boolean isCounted) {
      this.heading = heading;
      this.isCounted = isCounted;
      this.rows = rows;
      this.shown = rows.size();
    }

    int lines() {
      return rows.subList(0, shown).stream().mapToInt(List::size).sum();
    }

    boolean isWhole() {
      return shown == rows.size();
    }
  }

  /**
   * @param width columns of the terminal
   */
  public Excerpt(int width) {
    this.width = width;
  }

  /**
   * One more section.
   *
   * @param heading that stands above it
   * @param rows each to be wrapped
   * @param indent spaces before what goes on below a row
   * @param isCounted whether the heading says how many rows of all are shown; else that some are not
   */
  public Excerpt add(String heading, List<String> rows, int indent, boolean isCounted) {
    sections.add(new Section(
        heading, rows.stream().map(row -> Wrapped.lines(row, indent, width)).toList(), isCounted));
    return this;
  }

  /** Says everything. */
  public void sayAll(Lines lines) {
    sections.forEach(section -> section.shown = section.rows.size());
    say(lines);
  }

  /**
   * Says as much as has room.
   *
   * @param room lines for all sections with their headings and the blank lines before them; one row of each is shown
   *     however little there is
   */
  public void sayWithin(int room, Lines lines) {
    while (size() > room) {
      Section longest = null;
      for (var section : sections) {
        if (section.shown > 1 && (longest == null || section.lines() > longest.lines())) {
          longest = section;
        }
      }
      if (longest == null) {
        break;
      }
      longest.shown--;
    }
    say(lines);
  }

  /** Whether all of it has room, as for {@link #sayWithin}. */
  public boolean fits(int room) {
    return size() <= room;
  }

  private int size() {
    return sections.stream()
        .mapToInt(section -> 1 + Wrapped.lines(heading(section), 0, width).size() + section.lines())
        .sum();
  }

  private static String heading(Section section) {
    if (section.isWhole()) {
      return section.heading;
    }
    return section.isCounted
        ? "%s, %s of %s".formatted(section.heading, section.shown, section.rows.size())
        : section.heading.replaceAll("\\.$", "") + " …";
  }

  /** Whether something is left out. */
  public boolean isShortened() {
    return sections.stream().anyMatch(section -> !section.isWhole());
  }

  private void say(Lines lines) {
    for (var section : sections) {
      lines.blank().say(heading(section));
      section.rows.subList(0, section.shown).forEach(row -> row.forEach(lines::whole));
    }
  }
}
