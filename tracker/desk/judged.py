"""What the market's verdicts on a comparison rest on."""

from collections.abc import Mapping
from dataclasses import dataclass

from tracker.desk.rates import Rate, RatesOn
from tracker.desk.yardsticks import Yardsticks
from tracker.market.bands import Bands
from tracker.market.offers import Offers, Settings
from tracker.market.verdicts import Verdicts


@dataclass(frozen=True, slots=True)
class Judged:
    """What the verdicts were made from and what they are, aligned with the snapshot; prices per tonne in the chosen
    currency. `rates` has the exchange rate of every currency in the snapshot that is known on the day; `held` is what
    the user set to judge by, `on` the rates of the day."""

    offers: Offers
    bands: Bands
    settings: Settings
    verdicts: Verdicts
    rates: Mapping[str, Rate]
    held: Yardsticks | None = None
    on: RatesOn | None = None
