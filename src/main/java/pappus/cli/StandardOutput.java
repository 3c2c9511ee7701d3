package pappus.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Standard output that remembers why it could not be written; the machine's own keeps silent. */
final class StandardOutput extends OutputStream {
  private final OutputStream to = new FileOutputStream(FileDescriptor.out);
  private @Nullable IOException failure;

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) {
    if (failure != null) {
      return;
    }
    try {
      to.write(bytes, from, length);
    } catch (IOException e) {
      failure = e;
    }
  }

  /** Why something was lost. Who reads a pipe and goes away has what they wanted: that is no loss. */
  Optional<String> loss() {
    return Optional.ofNullable(failure)
        .map(Failures::reason)
        .filter(reason -> !reason.toLowerCase(Locale.ROOT).contains("pipe"));
  }
}
