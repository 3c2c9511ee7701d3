package pappus.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Catalogues whose part names try to be more than names. */
final class HostileNames {
  static final String FORMULA = "=cmd|' /C calc'!A0";
  static final String SCRIPT = "<script>alert(1)</script>";
  static final String TABLE = "Tidewell | 2S";
  static final String LINK = "[x](http://y)";

  private HostileNames() {}

  /** Names of four parts that the tests put in and leave out. */
  static void write(Path folder) throws IOException {
    rename(folder, "batteries.json", "Tidewell 2S 3400", FORMULA);
    rename(folder, "batteries.json", "Tidewell 2S 3500", TABLE);
    rename(folder, "frames.json", "Cottongrass 4", SCRIPT);
    rename(folder, "cameras.json", "Newteye 14 Feather", LINK);
  }

  /** Gives a part another name, as it would stand in a file. */
  static void rename(Path folder, String file, String name, String other) throws IOException {
    var path = folder.resolve("parts").resolve(file);
    var text = Files.readString(path);
    var quoted = "\"name\": \"" + name + "\"";
    if (!text.contains(quoted)) {
      throw new AssertionError(file + " has no " + quoted);
    }
    Files.writeString(path, text.replace(quoted, "\"name\": \"" + other + "\""));
  }
}
