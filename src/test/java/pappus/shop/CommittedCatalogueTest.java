package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.part.Kind;
import pappus.part.Part;

/**
 * The committed catalogue is what the generator gives. To write it anew: {@code mvn test
 * -Dtest=CommittedCatalogueTest -Dpappus.writeCatalog=true}.
 */
final class CommittedCatalogueTest {
  private static final Path FOLDER = Path.of("catalog");

  static List<Part> committed(Kind kind) {
    return CatalogueText.read(kind, text(kind));
  }

  private static String text(Kind kind) {
    try {
      return Files.readString(FOLDER.resolve(kind.fileName()), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyFileIsWhatTheGeneratorGives(Kind kind) throws IOException {
    var generated = CatalogueText.write(kind, Shop.of(kind));
    if (Boolean.getBoolean("pappus.writeCatalog")) {
      Files.writeString(FOLDER.resolve(kind.fileName()), generated, StandardCharsets.UTF_8);
    }

    assertThat(text(kind)).isEqualTo(generated);
  }

  @ParameterizedTest
  @EnumSource
  void everyFileReadsBackAsTheSameRecords(Kind kind) {
    assertThat(committed(kind)).isEqualTo(Shop.of(kind));
  }
}
