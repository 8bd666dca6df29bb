package org.fizzhull.decide.why;

import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Notice;

/** What a maker saw go wrong. All but {@link #CRACKED} have a chance that the models compute. */
public enum Symptom {
    /** It went down when it was put in. */
    SANK("sank"),
    /** It floated at first and went down before it was gone. */
    SANK_LATER("sank-later"),
    /** It went down and came up late. */
    ROSE_LATE("rose-late"),
    /** It swelled or blew up while it dried. */
    PUFFED("puffed"),
    /** It cracked: not computed. */
    CRACKED("cracked"),
    /** It fell apart as it came out of the mould. */
    CRUMBLED("crumbled"),
    /** It stayed soft: too wet out of the mould, or not dry in its time. */
    SOFT("soft"),
    /** It fizzed weakly, or hardly at all. */
    WEAK_FIZZ("weak-fizz"),
    /** It turned over, or lay another way than its usual one. */
    TIPPED("tipped"),
    /** It did not become dry. */
    NEVER_DRIED("never-dried");

    /** The word as it is typed, and the value of the key {@code saw}. */
    private final String word;

    Symptom(String word) {
        this.word = word;
    }

    /** {@return the word as it is typed} */
    public String word() {
        return word;
    }

    /**
     * {@return whether it is computed of a design; causes of one that is not are ranked from what was measured alone}
     * Whether a piece dries is not where nothing is said of its drying, nor whether it holds where it is only known on
     * the scale.
     *
     * @param design what was planned
     */
    public boolean computed(Design design) {
        boolean made = !(design.filling() instanceof Design.Filling.Finished);
        return switch (this) {
            case CRACKED -> false;
            case PUFFED, NEVER_DRIED -> made && design.drying().isPresent();
            case CRUMBLED, SOFT -> made;
            case SANK, SANK_LATER, ROSE_LATE, TIPPED, WEAK_FIZZ -> true;
        };
    }

    /**
     * {@return a notice where it is not computed, and what the answer then rests on}
     *
     * @param design what was planned
     */
    public Optional<Notice> notice(Design design) {
        String why = switch (this) {
            case CRACKED -> "Whether a piece has cracked is not computed, nor are warts, frost or knocks in the post";
            case PUFFED, NEVER_DRIED -> "Nothing is said of the air it dried in, so how it dries is not computed";
            default -> "Nothing is said of how it was made, so what comes out of the mould is not computed";
        };
        return computed(design)
                ? Optional.empty()
                : Optional.of(new Notice("not-computed", why + ": what follows rests on what was measured alone."));
    }

    /** {@return whether it is about the weight: a lighter piece of the same batch would not show it} */
    public boolean ofWeight() {
        return this == SANK || this == ROSE_LATE || this == SANK_LATER;
    }

    /** {@return whether it is about the drop, and not about what becomes of a piece afloat} */
    public boolean ofTheDrop() {
        return this == SANK || this == ROSE_LATE;
    }

    /** Whether a piece of a weight shows it where another is the heaviest that floats at once, or to the end, kg. */
    boolean shownBy(double mass, double atOnce, double toTheEnd) {
        return switch (this) {
            case SANK, ROSE_LATE -> mass > atOnce;
            case SANK_LATER -> mass > toTheEnd && mass <= atOnce;
            case TIPPED, WEAK_FIZZ, PUFFED, NEVER_DRIED, CRUMBLED, SOFT, CRACKED -> true;
        };
    }

    /** {@return whether the symptom shows in the drying, so that the drying of every cause has to be drawn} */
    boolean shownByDrying() {
        return this == PUFFED || this == NEVER_DRIED || this == WEAK_FIZZ || this == SOFT;
    }
}
