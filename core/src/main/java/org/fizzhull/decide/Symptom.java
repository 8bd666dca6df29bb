package org.fizzhull.decide;

/** What a maker saw go wrong, and where it is computed. */
public enum Symptom {
    /** It went down when it was put in. */
    SANK("sank", Stage.BATH),
    /** It floated at first and went down before it was gone. */
    SANK_LATER("sank-later", Stage.BATH),
    /** It went down and came up late. */
    ROSE_LATE("rose-late", Stage.BATH),
    /** It fizzed weakly or hardly at all. */
    WEAK_FIZZ("weak-fizz", Stage.DRYING),
    /** It swelled or blew up while it dried. */
    PUFFED("puffed", Stage.DRYING),
    /** It did not become dry. */
    NEVER_DRIED("never-dried", Stage.DRYING),
    /** It fell apart as it came out of the mould. */
    CRUMBLED("crumbled", Stage.PRESS),
    /** It stayed soft. */
    SOFT("soft", Stage.PRESS),
    /** It cracked: not computed. */
    CRACKED("cracked", Stage.NOT_COMPUTED),
    /** It did not lie the way it should: not computed beyond the attitudes of an even piece. */
    TIPPED("tipped", Stage.NOT_COMPUTED);

    /** Which part of the chain a symptom shows in. */
    public enum Stage {
        /** The piece out of the mould. */
        PRESS,
        /** Between press and bath. */
        DRYING,
        /** The bath. */
        BATH,
        /** None that is computed: only what was measured tells causes apart. */
        NOT_COMPUTED
    }

    private final String word;
    private final Stage stage;

    Symptom(String word, Stage stage) {
        this.word = word;
        this.stage = stage;
    }

    /** The word as it is typed. */
    public String word() {
        return word;
    }

    /** Where it is computed. */
    public Stage stage() {
        return stage;
    }
}
