package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import pappus.document.Numbered;

/**
 * What a page's script writes of each build once it is opened; sentences and rows that several builds have are there
 * once.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-holds-what-it-tells-once
 */
final class Details {
  private final Numbered texts = new Numbered();
  private final Numbered parts = new Numbered();
  private final Numbered bounds = new Numbered();

  private Details() {}

  /**
   * For the page's script.
   *
   * @param views one at least
   */
  static Map<String, Object> of(List<CandidateView> views) {
    return new Details().content(views);
  }

  private Map<String, Object> content(List<CandidateView> views) {
    var builds = new LinkedHashMap<String, Object>();
    views.forEach(view -> builds.put(view.anchor(), build(view)));
    var content = new LinkedHashMap<String, Object>();
    content.put(
        "columns",
        views.get(0).parts().columns().stream()
            .map(column -> List.of(column.title(), column.isNumber()))
            .toList());
    content.put("texts", texts.all());
    content.put("parts", parts.all());
    content.put("bounds", bounds.all());
    content.put("builds", builds);
    return content;
  }

  private Map<String, Object> build(CandidateView view) {
    var content = new LinkedHashMap<String, Object>();
    content.put("title", view.title());
    content.put("first", said(view, CandidateWords.Said::isFirst));
    content.put("words", said(view, said -> !said.isFirst() && !said.isNote()));
    content.put("notes", said(view, CandidateWords.Said::isNote));
    content.put(
        "parts",
        view.parts().rows().stream()
            .map(row -> parts.of(view.parts().shown(row)))
            .toList());
    var rooms = new ArrayList<Object>();
    view.rooms()
        .forEach(room -> rooms.add(List.of(
            bounds.of(List.of(room.what(), room.allowed() + " " + room.unit())),
            room.share(),
            room.has())));
    content.put("rooms", rooms);
    content.put("mass", view.mass().id());
    var curves = new ArrayList<Object>(List.of(view.power().id()));
    view.curves().forEach(chart -> curves.add(chart.id()));
    content.put("curves", curves);
    content.put("plan", view.plan().content(texts));
    return content;
  }

  private List<Integer> said(CandidateView view, Predicate<CandidateWords.Said> which) {
    return view.says().stream().filter(which).map(said -> texts.of(said.text())).toList();
  }
}
