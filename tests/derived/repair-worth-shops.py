"""The sums of "Is the repair worth it?" worked apart from the project, for shops of very different sizes.

Yearly cost of new: N (A/P) - S (A/F) + A. Most worth paying: what makes repair cost the same a year.
Boxes left empty: upkeep 7 and 4.5 % of the new price in 100 hours, resale and comeback 12 % of it, a day 2 % of it
for each 100 hours a year and at most 5 %, end value half of what the machine fetches today.
Run: python3 repair-worth-shops.py
"""


def recovery(rate, years):
    return rate * (1 + rate) ** years / ((1 + rate) ** years - 1)


def worth(quote, as_is, years, hours, price, life, end=None, upkeep=None, new_upkeep=None, comeback=None, resale=None,
          day=None, days=3, new_days=1, rate=0.08, come=0.10, worn=0.15, labor=75, minutes=15, finds=0.9, false=0.05,
          known=False):
    end = as_is / 2 if end is None else end
    upkeep = 0.07 * price * hours / 100 if upkeep is None else upkeep
    new_upkeep = 0.045 * price * hours / 100 if new_upkeep is None else new_upkeep
    comeback = 0.12 * price if comeback is None else comeback
    resale = 0.12 * price if resale is None else resale
    day = price * min(0.02 * hours / 100, 0.05) if day is None else day
    a_new, a = recovery(rate, life), recovery(rate, years)
    new = (price + new_days * day) * a_new - resale * (a_new - rate) + new_upkeep
    again = come * comeback / (1 + rate) ** min(1, years)
    most = (new - upkeep) / a + end / (1 + rate) ** years - as_is - days * day - again
    w = 0 if known else worn
    gain = most - quote
    blind = (1 - w) * gain - w * quote
    sound = (1 - w) * (1 - false) * gain - w * (1 - finds) * quote
    looks_worn = (1 - w) * false * gain - w * finds * quote
    look = max(sound, 0) + max(looks_worn, 0) - max(blind, 0)
    return round(most, 2), round((1 - w) * most, 2), round(look, 2), round(minutes / 60 * labor, 2)


cases = {
    'the worked example': dict(quote=260, as_is=120, years=3, hours=150, price=1300, life=6),
    'its quote at 343': dict(quote=343, as_is=120, years=3, hours=150, price=1300, life=6),
    'somebody pays 400 for it broken': dict(quote=350, as_is=400, years=3, hours=150, price=1200, life=6),
    'scrap 80, the same saw': dict(quote=350, as_is=80, years=3, hours=150, price=1200, life=6),
    'belt and bearing on a young saw': dict(quote=180, as_is=300, years=4, hours=150, price=1300, life=6),
    'cylinder kit': dict(quote=520, as_is=120, years=3, hours=150, price=1250, life=6, known=True),
    'cylinder kit at 300': dict(quote=300, as_is=120, years=3, hours=150, price=1250, life=6, known=True),
    'hire yard': dict(quote=320, as_is=120, years=1, hours=600, price=1400, life=2),
    'hobby': dict(quote=260, as_is=50, years=8, hours=20, price=900, life=15),
    'hobby, own figures': dict(quote=260, as_is=50, years=8, hours=20, price=900, life=15, upkeep=20, new_upkeep=15,
                               day=0, end=40, resale=150, comeback=150),
    'floor saw': dict(quote=2200, as_is=1500, years=3, hours=150, price=9500, life=6),
    'floor saw, own figures': dict(quote=2200, as_is=1500, years=3, hours=150, price=9500, life=6, end=800, resale=1500,
                                   upkeep=900, new_upkeep=500, day=250),
    'ten days of stop': dict(quote=260, as_is=120, years=3, hours=150, price=1300, life=6, days=10, day=120),
}
for name, case in cases.items():
    print(name, *worth(**case))
