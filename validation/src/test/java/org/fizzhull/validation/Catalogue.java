package org.fizzhull.validation;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fizzhull.evidence.Source;
import org.fizzhull.validation.bench.LearnChecks;
import org.fizzhull.validation.check.ChemistryChecks;
import org.fizzhull.validation.check.DecideChecks;
import org.fizzhull.validation.check.DryingChecks;
import org.fizzhull.validation.check.FizzChecks;
import org.fizzhull.validation.check.ForecastChecks;
import org.fizzhull.validation.check.HydrostaticsChecks;
import org.fizzhull.validation.check.MediumChecks;
import org.fizzhull.validation.check.MeshChecks;
import org.fizzhull.validation.check.PressingChecks;
import org.fizzhull.validation.check.QuantityChecks;
import org.fizzhull.validation.check.RecipeChecks;
import org.fizzhull.validation.check.ShapeChecks;
import org.fizzhull.validation.check.TradeChecks;
import org.fizzhull.validation.check.UncertaintyChecks;
import org.fizzhull.validation.check.VoyageChecks;
import org.fizzhull.validation.check.WhyChecks;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Check;
import org.fizzhull.validation.table.CheckFiles;
import org.fizzhull.validation.table.Outcome;

/** All tables of this module and what is bound to them. A new package is one line here. */
final class Catalogue {
    private Catalogue() {}

    static List<Bindings> bindings() {
        return List.of(
                new ChemistryChecks(),
                new DecideChecks(),
                new WhyChecks(),
                new DryingChecks(),
                new FizzChecks(),
                new HydrostaticsChecks(),
                new MediumChecks(),
                new MeshChecks(),
                new PressingChecks(),
                new QuantityChecks(),
                new RecipeChecks(),
                new ShapeChecks(),
                new TradeChecks(),
                new UncertaintyChecks(),
                new ForecastChecks(),
                new LearnChecks(),
                new VoyageChecks());
    }

    static List<Check> checks() {
        return CheckFiles.checks(folder());
    }

    static List<Source> sources() {
        return CheckFiles.sources(folder());
    }

    /** Every row with what is computed for it, once for all tests: they take half a minute. */
    static List<Outcome> outcomes() {
        return Computed.ALL;
    }

    /** Table beside table on all cores; a table's rows one after the other, since they share what is dear. */
    private static List<Outcome> compute() {
        List<Bindings> all = bindings();
        Map<String, List<Check>> tables = new LinkedHashMap<>();
        for (Check check : checks()) {
            tables.computeIfAbsent(check.table(), table -> new ArrayList<>()).add(check);
        }
        return tables.values().parallelStream()
                .flatMap(rows -> rows.stream().map(check -> outcome(check, bindingsOf(check, all))))
                .toList();
    }

    private static Outcome outcome(Check check, Bindings bindings) {
        try {
            return Outcome.of(check, bindings);
        } catch (RuntimeException e) {
            throw new IllegalStateException(check.id() + ": " + check.what(), e);
        }
    }

    /** Holds the outcomes; the work is done outside, since other threads wait for a class that is being initialised. */
    private static final class Computed {
        static final List<Outcome> ALL = compute();

        private Computed() {}
    }

    static Bindings bindingsOf(Check check, List<Bindings> all) {
        for (Bindings bindings : all) {
            if (bindings.table().equals(check.table())) {
                return bindings;
            }
        }
        throw new IllegalStateException(check.id() + ": no class binds table " + check.table());
    }

    private static Path folder() {
        try {
            return Path.of(Objects.requireNonNull(Catalogue.class.getResource("/checks"))
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
