package pappus.files.json;

/**
 * A record of a list in a file.
 *
 * @param index in the list, from 0
 * @param line where it begins, from 1
 * @param offset where it begins, bytes from the beginning of the file
 */
public record Listed<T>(T value, int index, int line, int offset) {}
