package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** The line that says what is being done. */
class ProgressTest {
  private final LinkedBlockingQueue<String> shown = new LinkedBlockingQueue<>();

  private Printer err() {
    var to = new Writer() {
      @Override
      public void write(char[] letters, int from, int length) {
        shown.add(new String(letters, from, length));
      }

      @Override
      public void flush() {}

      @Override
      public void close() {}
    };
    return Printer.err(Main.commandLine().setErr(new PrintWriter(to)));
  }

  private String next() throws InterruptedException {
    return String.valueOf(shown.poll(20, TimeUnit.SECONDS));
  }

  /** However long a step takes: nobody calls it. */
  @Test
  void tellsByItselfAndGoesAwayAtTheEnd() throws InterruptedException {
    var progress = Progress.on(err(), () -> true, "reading", Progress.ENDS);
    assertThat(next()).matches("\\r\\u001b\\[Kreading; [0-9]+ s, Ctrl-C ends it");
    progress.show("proving: best 43.0 min, unseen at most 44.1 min");
    // It takes up what is new at its next turn, and may be about to print what was.
    assertThat(next() + next()).contains("proving: best 43.0 min, unseen at most 44.1 min; ");
    progress.close();

    assertThat(List.copyOf(shown)).last().isEqualTo("\r\u001b[K");
  }

  @Test
  void saysNothingWhereNobodyWatches() throws InterruptedException {
    var asked = new CountDownLatch(1);
    try (var progress = Progress.on(
        err(),
        () -> {
          asked.countDown();
          return false;
        },
        "reading",
        Progress.ENDS)) {
      assertThat(asked.await(20, TimeUnit.SECONDS)).isTrue();
      progress.show("proving");
    }
    assertThat(shown).isEmpty();
  }

  /** A search that ends at once leaves no trace on the screen, and is not waited for. */
  @Test
  void isNotAskedForWhereItIsOverBefore() {
    var wasAsked = new AtomicBoolean();
    for (var i = 0; i < 20; i++) {
      Progress.on(err(), () -> wasAsked.getAndSet(true), "reading", Progress.ENDS)
          .close();
    }
    assertThat(shown.stream().filter(text -> text.contains("reading")).count())
        .isEqualTo(shown.stream().filter("\r\u001b[K"::equals).count());
  }

  @Test
  void isNeverLongerThanALine() {
    assertThat(Progress.line("x".repeat(200), 12, Progress.KEEPS))
        .hasSize(79)
        .endsWith("…; 12 s, Ctrl-C keeps it");
  }
}
