package fairgrain.clearance;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.moisture.PeriodicResponse;
import fairgrain.moisture.Swing;
import fairgrain.part.Finish;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/** What {@link FinishEffect} says to a maker. */
final class FinishWords {
    private static final double LITTLE = 0.10;
    private static final double NOTHING = 0.01;
    private static final Length HAIR = Length.mm(0.05); // nobody sees less cup

    private final FinishEffect effect;
    private final FinishEffect.Effect expected;
    private final List<Outcome> outcomes;

    FinishWords(FinishEffect effect) {
        this.effect = effect;
        this.expected = effect.answer();
        this.outcomes = Reliability.outcomes(effect, effect.in().deviations());
    }

    Finding finding() {
        Swing follows = effect.response().follows();
        Swing bare = effect.bare().follows();
        double off = 1 - follows.amplitude() / bare.amplitude();
        Words lag =
                Words.of("Bare it would follow the room {} late, so it follows {} late.", days(bare), days(follows));
        Words why = off < NOTHING
                ? Words.of(said() + " takes less than 1 % off what its moisture swings in a year.")
                        .and(lag)
                : Words.of(
                                said() + (off < LITTLE ? " takes only {} % off" : " takes {} % off")
                                        + " what its moisture swings in a year.",
                                Amount.count(Math.rint(100 * off)))
                        .and(lag);
        Finding.Draft draft = Finding.about(effect.part(), "what its finish does", why, effect.evidence())
                .outcomes(outcomes)
                .note("No gap is made smaller for a finish: it slows wood down and never changes where it ends, and it"
                        + " wears.");
        cup(draft);
        remedies(draft);
        draft.cautions(Caution.WOOD_DUST);
        if (isOil()) {
            draft.cautions(Caution.OILY_RAGS);
        }
        return draft.done();
    }

    /** Whether rags with it may catch fire: anything that is called an oil, an alkyd or a varnish. */
    private boolean isOil() {
        return Stream.of(effect.front().finish(), effect.back().finish())
                .filter(Objects::nonNull)
                .map(finish -> finish.name().toLowerCase(Locale.ROOT))
                .anyMatch(name -> name.contains("oil") || name.contains("alkyd") || name.contains("varnish"));
    }

    private String said() {
        Finish finish = effect.front().finish();
        String film = finish == null ? "Bare wood" : finish.said();
        return effect.isAlike() ? film + " on both faces" : film + " on its front alone";
    }

    private static Amount days(Swing swing) {
        return Amount.of(Math.rint(swing.lag() / PeriodicResponse.DAY) * PeriodicResponse.DAY, Dimension.TIME);
    }

    private void cup(Finding.Draft draft) {
        if (expected.cup().compareTo(HAIR) < 0) {
            draft.note(
                    effect.isAlike()
                            ? "Its two faces are alike and in like air, so it cups from its rings alone. Keep it so:"
                                    + " what goes on one face goes on the other."
                            : "Its two faces are not alike, but so thick or narrow a board hardly cups from that.");
            return;
        }
        draft.size("cup to expect, free", expected.cup());
        draft.note(
                "Its faces come to differ by up to {} moisture content, which would bow a free board this wide by {}"
                        + " in its middle.",
                new MoistureContent(expected.difference()),
                expected.cup());
        if (effect.framed()) {
            draft.note("A frame holds it flat; leave its edge 0.3 to 0.5 mm of play in the groove, so that it does not"
                    + " bind.");
        }
    }

    private void remedies(Finding.Draft draft) {
        boolean holds = outcomes.stream().allMatch(o -> o.planned().holds());
        FinishEffect alike = effect.alike();
        if (!holds
                && !effect.isAlike()
                && Reliability.outcomes(alike, effect.in().deviations()).stream()
                        .allMatch(o -> o.planned().holds())) {
            draft.remedies(List.of(
                    new Remedy(Words.of("Finish both faces alike, coat for coat, the hidden one too."), alike)));
        }
    }
}
