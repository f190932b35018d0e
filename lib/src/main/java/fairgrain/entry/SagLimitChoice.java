package fairgrain.entry;

import fairgrain.shelf.SagLimit;
import java.util.Optional;

/** How far a shelf may sag: by where it stands, or by what was chosen. */
final class SagLimitChoice {
    private SagLimitChoice() {}

    /** Refuses what says it twice. */
    static SagLimit of(boolean behindDoors, Optional<SagLimit> chosen) {
        if (behindDoors && chosen.isPresent()) {
            throw new IllegalArgumentException(
                    "'behind doors' and 'sag limit' say how far it may sag; keep one of them");
        }
        return chosen.orElse(behindDoors ? SagLimit.BEHIND_DOORS : SagLimit.OPEN);
    }
}
