package org.fizzhull.cli.deciding;

import org.fizzhull.cli.drying.DryCommand;
import org.fizzhull.cli.fizzing.FizzCommand;
import org.fizzhull.cli.floating.FloatCommand;
import org.fizzhull.cli.making.PressCommand;
import org.fizzhull.cli.option.Command;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.why.Why;

/** The command that helps on after a symptom: a change of weight mends no piece that does not dry. */
enum WhyNext {
    /** A lighter piece, another mould, another mix. */
    ADVISE("advise", "For the smallest change", new AdviseCommand()),
    /** When it is dry and in what air. */
    DRY("dry", "For when it dries, and in what air,", new DryCommand()),
    /** What holds. */
    PRESS("press", "For how much liquid holds, and how hard a press,", new PressCommand()),
    /** How it should fizz. */
    FIZZ("fizz", "For how it should fizz", new FizzCommand()),
    /** What is to be expected of the plan. */
    FLOAT("float", "For what the plan promises", new FloatCommand());

    final String name;
    final String words;
    final Command command;

    WhyNext(String name, String words, Command command) {
        this.name = name;
        this.words = words;
        this.command = command;
    }

    /** The command for what was found. */
    static WhyNext of(Why why) {
        Design design = why.design();
        boolean made = !(design.filling() instanceof Design.Filling.Finished);
        boolean dried = made && design.drying().isPresent();
        return switch (why.symptom()) {
            case SANK, SANK_LATER, ROSE_LATE -> why.unexplained() ? FLOAT : ADVISE;
            case PUFFED, NEVER_DRIED, CRACKED -> dried ? DRY : FLOAT;
            case SOFT -> dried ? DRY : made ? PRESS : FLOAT;
            case CRUMBLED -> made ? PRESS : FLOAT;
            case WEAK_FIZZ -> design.recipe().isPresent() ? FIZZ : FLOAT;
            case TIPPED -> FLOAT;
        };
    }
}
