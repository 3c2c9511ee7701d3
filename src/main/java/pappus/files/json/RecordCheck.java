package pappus.files.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import pappus.files.Source;
import pappus.quantity.Require;
import tools.jackson.core.JacksonException;

/**
 * Makes objects into records, innermost first and each on its own, to hear what the records say. An
 * object with a field in it that is missing or of the wrong kind cannot be made into one.
 */
final class RecordCheck {
  /** How the records' own messages begin: with the name of a component, or a path from there. */
  private static final Pattern OWN_MESSAGE = Pattern.compile(
      "([A-Za-z](?:[A-Za-z0-9.-]|\\[[0-9]+]|\\[\"(?:[^\"\\\\]|\\\\.)*\"])*) ((?:must|is missing).*)",
      Pattern.DOTALL);

  private final Source source;
  private final JsonPlaces places;
  private final Set<String> unbindable;

  /** After the check by schema: what that found wrong cannot be made into records. */
  RecordCheck(Source source, JsonPlaces places) {
    this.source = source;
    this.places = places;
    this.unbindable = places.faulty();
  }

  /**
   * Adds to the places what the records in the object at a path say, if there is one.
   *
   * @return all they say, in their words
   */
  List<String> check(Class<?> record, String path) {
    var said = new ArrayList<String>();
    var place = places.place(path).filter(each -> each.shown().equals("an object"));
    if (place.isEmpty()) {
      return said;
    }
    for (var component : record.getRecordComponents()) {
      said.addAll(
          checkComponent(component.getGenericType(), JsonPlaces.field(path, component.getName())));
    }
    if (!unbindable.contains(path)) {
      said.addAll(bind(record, path, place.get(), said));
    }
    return said;
  }

  private List<String> checkComponent(Type type, String path) {
    if (type instanceof Class<?> record && record.isRecord()) {
      return check(record, path);
    }
    var said = new ArrayList<String>();
    if (type instanceof ParameterizedType list
        && list.getRawType() == List.class
        && list.getActualTypeArguments()[0] instanceof Class<?> record
        && record.isRecord()) {
      for (var i = 0; places.place(JsonPlaces.element(path, i)).isPresent(); i++) {
        said.addAll(check(record, JsonPlaces.element(path, i)));
      }
    }
    return said;
  }

  /** What the record of an object says, apart from what those inside it have said. */
  private List<String> bind(
      Class<?> record, String path, JsonPlaces.Place place, List<String> saidInside) {
    var reader =
        path.isEmpty() ? StrictMapper.readerForFile(record) : StrictMapper.readerFor(record);
    Runnable bind = () ->
        StrictMapper.bind(reader, record, source.bytes(), place.from(), place.to() - place.from());
    try {
      bind.run();
    } catch (JacksonException e) {
      if (e.getCause() instanceof IllegalArgumentException refusal) {
        var said = new ArrayList<String>(messages(bind, refusal));
        saidInside.forEach(said::remove);
        said.forEach(message -> refuse(path, message, refusal));
        return said;
      }
      if (e.getCause() instanceof RuntimeException bug && !(bug instanceof JacksonException)) {
        throw new IllegalStateException("A record failed on the data at " + path + ".", bug);
      }
      refuse(path, e);
    }
    return List.of();
  }

  private static List<String> messages(Runnable bind, IllegalArgumentException first) {
    try {
      return Require.failuresOf(bind);
    } catch (JacksonException e) {
      return List.of(String.valueOf(first.getMessage()));
    }
  }

  private void refuse(String path, String message, IllegalArgumentException e) {
    var own = OWN_MESSAGE.matcher(message);
    if (!own.matches()) {
      throw new IllegalStateException("A record refused the data at " + path + ".", e);
    }
    places.refuse(path.isEmpty() ? own.group(1) : path + "." + own.group(1), own.group(2));
  }

  private void refuse(String path, JacksonException e) {
    places.refuse(
        JsonPlaces.path(path, e),
        e instanceof StrictScalars.Refusal
            ? e.getOriginalMessage()
            : "must be as its schema says, but is not.");
  }
}
