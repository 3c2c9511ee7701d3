package pappus.files;

import java.util.Collection;
import java.util.Optional;

/** Guesses which name was meant. */
public final class Closest {
  private Closest() {}

  /**
   * The name with the fewest letters to change, if they are few: a third of its length, and two at least, but never
   * more than half of what is there, or any two letters would be any other two. Of equals the first by alphabet.
   */
  public static Optional<String> to(String typed, Collection<String> names) {
    var best = Optional.<String>empty();
    var least = Integer.MAX_VALUE;
    for (var name : names) {
      var half = Math.max(name.length(), typed.length()) / 2;
      var most = Math.min(least, Math.min(half, Math.max(2, name.length() / 3)));
      if (Math.abs(name.length() - typed.length()) > most) {
        continue;
      }
      var distance = distance(typed, name);
      var isCloser =
          distance < least || best.map(other -> name.compareTo(other) < 0).orElse(true);
      if (distance <= most && isCloser) {
        least = distance;
        best = Optional.of(name);
      }
    }
    return best;
  }

  /** Advice for the end of a sentence, or nothing. */
  public static String advice(String typed, Collection<String> names) {
    return to(typed, names).map(name -> " Maybe " + name + " was meant.").orElse("");
  }

  /** Letters to insert, leave out, change, or swap with their neighbour; case is free. */
  private static int distance(String a, String b) {
    var beforeLast = new int[b.length() + 1];
    var last = new int[b.length() + 1];
    var row = new int[b.length() + 1];
    for (var j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (var i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (var j = 1; j <= b.length(); j++) {
        var change = same(a, i, b, j) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1 && j > 1 && same(a, i, b, j - 1) && same(a, i - 1, b, j)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      var free = beforeLast;
      beforeLast = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }

  private static boolean same(String a, int i, String b, int j) {
    return Character.toLowerCase(a.charAt(i - 1)) == Character.toLowerCase(b.charAt(j - 1));
  }
}
