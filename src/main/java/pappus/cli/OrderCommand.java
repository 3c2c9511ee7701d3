package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.answers.order.OrderJson;
import pappus.answers.order.OrderPage;
import pappus.answers.order.OrderReport;
import pappus.answers.order.Unserved;
import pappus.answers.result.Run;
import pappus.answers.result.ToldOrder;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Source;
import pappus.files.output.OutputFolder;
import pappus.order.AskedGroup;
import pappus.order.Earlier;
import pappus.order.OrderInputs;
import pappus.order.OrderReader;
import pappus.order.column.Asker;
import pappus.order.plan.Plan;
import pappus.order.plan.Planner;
import pappus.order.plan.Reviser;
import pappus.order.timefold.OrderChooser;
import pappus.ranking.Finder;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.Relaxer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Several builds from one budget. */
@Command(
    name = "order",
    description =
        "Plans what a club orders: a build for each learner of several groups, from one budget, one shelf and the stock of shops, with common spares.",
    footer = {
      "pappus order scenarios/drawer/order.json",
      "pappus order scenarios/drawer/order.json --report",
      "pappus order scenarios/neap-tarn/order.json --format json",
      "pappus order --revise out/drawer/order.json --have came.csv --stock now.csv"
    })
final class OrderCommand implements JsonAnswer, Callable<Integer> {
  private static final String TOLD = "order.json";

  @Spec
  private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "ORDER",
      description =
          "Groups, budget, shops and spares, a JSON file; describe order has its fields. Left out with --revise, whose file names it.")
  private @Nullable Path file;

  @Option(
      names = "--revise",
      paramLabel = "order.json",
      description =
          "What order wrote before: what came of it stays, as few learners as can be get other main parts, then as little as can be is paid.")
  private @Nullable Path told;

  @Option(
      names = "--have",
      paramLabel = "CSV",
      description =
          "What came of it, columns id and pieces, such as a list to buy from with what came; may be given again. Left out: nothing came.")
  private List<Path> have = new ArrayList<>();

  @Option(
      names = "--stock",
      paramLabel = "CSV",
      description =
          "What the shop can deliver now, columns id, stock in selling units, and price; with SHOP= before it where there are several. Left out: as the order says.")
  private List<String> stocks = new ArrayList<>();

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
      description =
          "Folder for result files; default out/ and the order's name, of a revised order with -revised behind it.")
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
    if (told == null) {
      if (file == null) {
        throw usage("ORDER must be there, or --revise.");
      }
      if (!have.isEmpty() || !stocks.isEmpty()) {
        throw usage("--have and --stock must be left out without --revise.");
      }
      return plan(file);
    }
    if (file != null) {
      throw usage("ORDER must be left out with --revise, whose file names it.");
    }
    return revise(told);
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private int plan(Path order) {
    var inputs = read(() -> OrderReader.read(order, catalogs.folders()));
    remark(inputs.remarks());
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
      return write(plan, new OrderReport(plan), OrderJson.of(plan, run(inputs)));
    } finally {
      interruption.close();
      progress.close();
    }
  }

  private int revise(Path result) {
    var source = Source.read(result);
    var earlier = earlier(result, source);
    if (!catalogs.areNamed()) {
      var names = earlier.catalogs();
      for (var i = 0; i < names.size(); i++) {
        ToldCommand.path(result, "catalogs[" + i + "]", names.get(i));
      }
      catalogs.takeAsTold(names);
    }
    var order =
        ToldCommand.path(result, "inputs[0].name", earlier.inputs().get(0).name());
    var delivery = read(() -> OrderReader.delivered(
        order,
        catalogs.folders(),
        ordered(earlier, ToldOrder.before(source)),
        result.toString(),
        have,
        stocks));
    var inputs = delivery.now();
    var folder = folder(inputs.order().name() + "-revised");
    if (folder
        .resolve(TOLD)
        .toAbsolutePath()
        .normalize()
        .equals(result.toAbsolutePath().normalize())) {
      throw usage("--out must be another folder than that of the order that is revised.");
    }
    remark(inputs.remarks());
    var progress = Progress.of(err(), quiet, "revising", Progress.KEEPS);
    var reviser = new Reviser(delivery, Planner.MOVES, progress::show);
    var interruption = Interruption.watch(reviser::stop);
    try {
      var askers = reviser.askers();
      var renewal = reviser.renewal(askers);
      if (!renewal.unserved().isEmpty()) {
        progress.close();
        return refuse(renewal.unserved());
      }
      var revision = reviser.revise(askers, renewal);
      progress.close();
      return write(
          revision.plan(),
          new OrderReport(revision),
          OrderJson.of(revision, run(inputs), source.fingerprint()));
    } finally {
      interruption.close();
      progress.close();
    }
  }

  private static ToldOrder earlier(Path result, Source source) {
    if (!ToldOrder.isOne(source)) {
      throw InputException.badData(
          Problem.ofFile(result.toString(), "must be what order wrote, but is another file."));
    }
    return ToldOrder.of(source);
  }

  private static Earlier ordered(ToldOrder told, ToldOrder.Revision before) {
    var bags = new ArrayList<Earlier.Bag>();
    for (var group : told.groups()) {
      group
          .builds()
          .forEach(build -> bags.add(
              new Earlier.Bag(group.name(), build.name(), build.learners(), build.roles())));
    }
    return new Earlier(
        bags,
        Stream.concat(before.came().stream(), told.buys().stream())
            .map(one -> new Earlier.Bought(one.part(), one.pieces(), one.cents()))
            .toList(),
        before.postageCents() + told.paid().postageCents());
  }

  private int write(Plan plan, OrderReport report, String json) {
    var files = new LinkedHashMap<String, String>();
    files.put(TOLD, json);
    if (plan.isFeasible()) {
      files.putAll(report.lists());
      if (page.isWanted()) {
        files.put("order.html", OrderPage.of(plan, report, Version.tool()));
      }
    }
    var name = plan.inputs().order().name();
    new OutputFolder(folder(told == null ? name : name + "-revised"), force).write(files);
    out().document(wantsJson() ? json : report.text(Terminal.columns()));
    return plan.isFeasible() ? ExitCode.OK : ExitCode.NO;
  }

  private Path folder(String name) {
    return outFolder == null ? Path.of("out", name) : outFolder;
  }

  private <T> T read(Supplier<T> reading) {
    var progress = Progress.of(err(), quiet, "reading", Progress.ENDS);
    try {
      return reading.get();
    } finally {
      progress.close();
    }
  }

  private void remark(List<String> remarks) {
    if (!quiet) {
      remarks.forEach(err()::line);
    }
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
