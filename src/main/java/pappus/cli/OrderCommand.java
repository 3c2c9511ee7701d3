package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.answers.order.OrderJson;
import pappus.answers.order.OrderPage;
import pappus.answers.order.OrderReport;
import pappus.answers.order.Unserved;
import pappus.answers.result.Run;
import pappus.files.output.OutputFolder;
import pappus.order.AskedGroup;
import pappus.order.OrderInputs;
import pappus.order.OrderReader;
import pappus.order.column.Asker;
import pappus.order.plan.Planner;
import pappus.order.timefold.OrderChooser;
import pappus.ranking.Finder;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.Relaxer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Several builds from one budget. */
@Command(
    name = "order",
    description =
        "Plans what a club orders: a build for each learner of several groups, from one budget, one shelf and the stock of shops, with common spares.",
    footer = {
      "pappus order scenarios/neap-tarn/order.json",
      "pappus order scenarios/neap-tarn/order.json --format json",
      "pappus order scenarios/neap-tarn/order.json --report"
    })
final class OrderCommand implements JsonAnswer, Callable<Integer> {
  @Spec
  private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "ORDER",
      description = "Groups, budget, shops and spares, a JSON file; describe order has its fields.")
  private Path file;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "text",
      description = "How to print the answer.")
  private TextOrJson format;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Folder for result files; default out/ and the order's name.")
  private @Nullable Path outFolder;

  @Option(names = "--force", description = "Replace files in it that this tool did not write.")
  private boolean force;

  @Mixin
  private ReportOption page = new ReportOption();

  @Option(names = "--quiet", description = "No progress and no remarks on standard error.")
  private boolean quiet;

  @Override
  public boolean wantsJson() {
    return format == TextOrJson.JSON;
  }

  @Override
  public Integer call() {
    var inputs = read();
    var progress = Progress.of(err(), quiet, "ordering", Progress.KEEPS);
    var planner = new Planner(inputs, Planner.MOVES, progress::show);
    var interruption = Interruption.watch(planner::stop);
    try {
      var askers = planner.askers();
      var unserved = askers.stream().filter(asker -> !asker.hasBuild()).toList();
      if (!unserved.isEmpty()) {
        progress.close();
        return refuse(unserved);
      }
      var plan = planner.plan(askers);
      progress.close();
      var report = new OrderReport(plan);
      var json = OrderJson.of(plan, run(inputs));
      var files = new LinkedHashMap<String, String>();
      files.put("order.json", json);
      if (plan.isFeasible()) {
        files.putAll(report.lists());
        if (page.isWanted()) {
          files.put("order.html", OrderPage.of(plan, report, Version.tool()));
        }
      }
      var folder = outFolder == null ? Path.of("out", inputs.order().name()) : outFolder;
      new OutputFolder(folder, force).write(files);
      out().document(wantsJson() ? json : report.text(Terminal.columns()));
      return plan.isFeasible() ? ExitCode.OK : ExitCode.NO;
    } finally {
      interruption.close();
      progress.close();
    }
  }

  private OrderInputs read() {
    var progress = Progress.of(err(), quiet, "reading", Progress.ENDS);
    OrderInputs inputs;
    try {
      inputs = OrderReader.read(file, catalogs.folders());
    } finally {
      progress.close();
    }
    if (!quiet) {
      inputs.remarks().forEach(err()::line);
    }
    return inputs;
  }

  /** Groups that have no build at all are named with what would serve them. */
  private int refuse(List<Asker> unserved) {
    var told = new ArrayList<Unserved>();
    for (var asker : unserved) {
      told.add(new Unserved(asker.asked(), relaxation(asker.asked())));
    }
    out()
        .document(
            wantsJson()
                ? Unserved.json(told, Version.tool())
                : Unserved.text(told, Terminal.columns()));
    return ExitCode.NO;
  }

  private Relaxation relaxation(AskedGroup asked) {
    var progress = Progress.of(err(), quiet, "searching", Progress.KEEPS);
    try {
      var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, progress::show);
      return new Relaxer(asked.alone(), finder).relax();
    } finally {
      progress.close();
    }
  }

  private Run run(OrderInputs inputs) {
    return new Run(
        Version.tool(),
        OrderChooser.SEED,
        Planner.MOVES,
        catalogs.names(),
        inputs.files(),
        List.of());
  }

  private Printer out() {
    return Printer.out(spec.commandLine());
  }

  private Printer err() {
    return Printer.err(spec.commandLine());
  }
}
