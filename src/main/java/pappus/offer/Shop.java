package pappus.offer;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.files.Fingerprint;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;

/**
 * A shop as its settings file tells it.
 *
 * @param settings what it says of itself
 * @param logo its logo as a data URI; absent if it has none
 * @param inputs every file that was read
 */
public record Shop(ShopSettings settings, Optional<String> logo, List<Fingerprint> inputs) {
  /** Name of the schema of its settings. */
  public static final String SCHEMA = "shop";

  /** With the charts' script, no offer is to pass a megabyte. */
  private static final int MOST_LOGO_BYTES = 200_000;

  public Shop {
    inputs = List.copyOf(inputs);
  }

  /**
   * Reads the settings and the logo they name; what is wrong is added to the problems.
   *
   * @param currency of the catalogue, which must be that of the shop
   */
  public static Optional<Shop> read(Path file, String currency, Problems problems) {
    var source = Source.find(file, problems);
    if (source.isEmpty()) {
      return Optional.empty();
    }
    var read = JsonReader.readRecord(source.get(), SCHEMA, ShopSettings.class, problems);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    var settings = read.get();
    var places = JsonPlaces.of(source.get());
    if (!settings.currency().equals(currency)) {
      problems.add(places.problem(
          "currency",
          "must be that of the catalogue, %s, but is %s."
              .formatted(currency, settings.currency())));
    }
    if (settings.logo() == null) {
      return Optional.of(
          new Shop(settings, Optional.empty(), List.of(source.get().fingerprint())));
    }
    var logo = Source.find(file.resolveSibling(settings.logo()), problems);
    if (logo.isEmpty()) {
      return Optional.empty();
    }
    var bytes = logo.get().content();
    var type = type(bytes);
    if (type == null || bytes.length > MOST_LOGO_BYTES) {
      problems.add(places.problem(
          "logo",
          type == null
              ? "must name a png, jpeg or svg file, but %s is none.".formatted(settings.logo())
              : "must name a file of at most %s bytes, but %s has %s."
                  .formatted(MOST_LOGO_BYTES, settings.logo(), bytes.length)));
      return Optional.empty();
    }
    var uri = "data:%s;base64,%s".formatted(type, Base64.getEncoder().encodeToString(bytes));
    return Optional.of(new Shop(
        settings,
        Optional.of(uri),
        List.of(source.get().fingerprint(), logo.get().fingerprint())));
  }

  /** By its first bytes: a name proves nothing. A picture in an image element runs no script. */
  private static @Nullable String type(byte[] bytes) {
    if (startsWith(bytes, 0x89, 'P', 'N', 'G')) {
      return "image/png";
    }
    if (startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
      return "image/jpeg";
    }
    var head = new String(bytes, 0, Math.min(bytes.length, 1000), StandardCharsets.UTF_8);
    return head.stripLeading().startsWith("<") && head.contains("<svg") ? "image/svg+xml" : null;
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    for (var i = 0; i < start.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }
}
