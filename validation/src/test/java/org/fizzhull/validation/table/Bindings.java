package org.fizzhull.validation.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What computes the rows of one package: binding name to computation, and to the other program of a live row. */
public abstract class Bindings {
    private final String table;
    private final Map<String, ToDoubleFunction<Inputs>> ours = new LinkedHashMap<>();
    private final Map<String, ToDoubleFunction<Inputs>> others = new LinkedHashMap<>();

    protected Bindings(String table) {
        this.table = table;
    }

    /** Adds the computation of this library, in the unit of the rows. */
    protected final void bind(String name, ToDoubleFunction<Inputs> computation) {
        if (ours.put(name, computation) != null) {
            throw new IllegalArgumentException("bound twice: " + name);
        }
    }

    /** Adds the other program that a live row is held against. */
    protected final void bindLive(
            String name, ToDoubleFunction<Inputs> computation, ToDoubleFunction<Inputs> otherProgram) {
        bind(name, computation);
        others.put(name, otherProgram);
    }

    public final String table() {
        return table;
    }

    public final Map<String, ToDoubleFunction<Inputs>> ours() {
        return ours;
    }

    final Map<String, ToDoubleFunction<Inputs>> others() {
        return others;
    }
}
