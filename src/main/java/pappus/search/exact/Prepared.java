package pappus.search.exact;

import org.jspecify.annotations.Nullable;
import pappus.search.Question;

/**
 * What a search works out before it starts, all of which depends on parts and scenario and not on what builds are ranked
 * by: searches of one question for one thing after another share it. Safe for several threads.
 */
public final class Prepared {
  private final Question question;
  private final Goods goods;
  private final @Nullable Relaxed relaxed;

  /** Trees and relaxations of a question that has parts for all that flies. */
  record Relaxed(Trees trees, Frames frames, KitRelaxations kits, Boxes boxes) {}

  private Prepared(Question question) {
    this.question = question;
    this.goods = new Goods(question);
    this.relaxed = goods.areComplete() ? relaxed(goods) : null;
  }

  /** For searches of a question, whatever its builds are ranked by. */
  public static Prepared of(Question question) {
    return new Prepared(question);
  }

  private static Relaxed relaxed(Goods goods) {
    var frames = new Frames(goods);
    var kits = new KitRelaxations(goods);
    return new Relaxed(new Trees(goods, kits), frames, kits, new Boxes(goods, frames, kits));
  }

  /** Whether it serves a question: the same parts, bounded by the same figures. */
  public boolean isFor(Question other) {
    return question.hasPartsOf(other)
        && question.assessor().prospects().boundsLike(other.assessor().prospects());
  }

  Goods goods() {
    return goods;
  }

  /** Whether there are parts for all that flies. */
  boolean isComplete() {
    return relaxed != null;
  }

  Relaxed relaxed() {
    if (relaxed == null) {
      throw new IllegalStateException("no parts for all that flies");
    }
    return relaxed;
  }
}
