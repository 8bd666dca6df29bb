package org.fizzhull.decide.why;

import java.util.Optional;
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

    /** {@return whether it is computed; causes of one that is not are ranked from what was measured alone} */
    public boolean computed() {
        return this != CRACKED;
    }

    /** {@return what the answer rests on where the symptom is not computed; else empty} */
    public Optional<Notice> notice() {
        return computed()
                ? Optional.empty()
                : Optional.of(
                        new Notice(
                                "not-computed",
                                "Whether a piece has " + word
                                        + " is not computed, nor are warts, frost or knocks in the post: what follows rests on what was measured alone."));
    }

    /** {@return whether the symptom shows in the drying, so that the drying of every cause has to be drawn} */
    boolean shownByDrying() {
        return this == PUFFED || this == NEVER_DRIED || this == WEAK_FIZZ || this == SOFT;
    }
}
