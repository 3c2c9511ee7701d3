package pappus.answers.sheet;

import java.util.List;
import pappus.document.Table;

/**
 * One table of a bench sheet and what is said below it.
 *
 * @param key for machines: small letters and hyphens
 * @param title for people
 * @param table may have no rows
 * @param says sentences, with nothing in them that a terminal would obey
 */
public record SheetSection(String key, String title, Table table, List<String> says) {
  public SheetSection {
    says = List.copyOf(says);
  }

  /** Whether it has anything to show. */
  public boolean isEmpty() {
    return table.rows().isEmpty() && says.isEmpty();
  }

  /** Whether it lists what is bought. */
  boolean isBought() {
    return key.equals("purchases");
  }

  /** Whether each of its rows has a box to tick: what is bought, screwed in or cut. */
  public boolean isTicked() {
    return List.of("purchases", "screws", "wires").contains(key);
  }

  /** Whether one of its columns is written into. */
  public boolean isWrittenOn() {
    return key.equals("weighing");
  }
}
