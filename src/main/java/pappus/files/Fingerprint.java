package pappus.files;

/**
 * Which bytes an answer came from.
 *
 * @param name of the file as the user typed it
 * @param sha256 of its bytes, 64 hexadecimal digits
 */
public record Fingerprint(String name, String sha256) {}
