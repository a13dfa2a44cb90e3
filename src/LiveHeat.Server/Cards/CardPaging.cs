namespace LiveHeat.Server.Cards;

/// <summary>Deals a card's rounds out to sheets of A4, by the room that their lines need. Lengths in millimetres, as in cards.css.</summary>
internal static class CardPaging
{
    /// <summary>A4 less the margins above and below, less a little: letters of other widths than expected take another line now and then.</summary>
    private const double Sheet = 275 - 4;

    private const double FirstHead = 46;
    private const double NextHead = 13;
    private const double Foot = 37;
    private const double Heading = 6;
    private const double TextLine = 4.3;
    private const double BoxLine = 4.5;
    private const double Around = 1.8;
    private const double MoreRounds = 46;
    private const double Mark = 4.8;
    private const double AttemptLine = 6;
    private const double TallyLine = 5.6;
    private const double RoundEnd = 7;

    /// <summary>No set is torn, so one column is longer than the other by as much as a set; or as a round that stands in one piece.</summary>
    private const double Uneven = 12;

    /// <summary>A higher round by the clock is torn between sets: half a column would stay empty.</summary>
    private const double HighestTogether = 70;

    /// <summary>Boxes in a row of a column.</summary>
    private const int BoxesInRow = 20;

    /// <summary>Letters of a label in a row, beside the no-rep line.</summary>
    private const int LettersInRow = 34;

    /// <param name="rounds">All that is to be marked.</param>
    /// <param name="endless">There is room for more rounds at the end.</param>
    /// <param name="marks">Sentences that say how it is marked, from 1.</param>
    public static IReadOnlyList<IReadOnlyList<CardRound>> Pages(IReadOnlyList<CardRound> rounds, bool endless, int marks)
    {
        var pages = new List<IReadOnlyList<CardRound>>();
        var left = rounds.Select(round => round with { Together = round.Times.Length > 0 && Height(round) <= HighestTogether }).ToList();
        var uneven = left.Where(round => round.Together).Select(Height).Append(Uneven).Max();
        while (left.Count > 0)
        {
            var head = pages.Count == 0 ? FirstHead + (Mark * (marks - 1)) : NextHead;
            var (last, whole) = ((2 * (Sheet - head - Foot)) - uneven - (endless ? MoreRounds : 0), (2 * (Sheet - head)) - uneven);
            if (left.Sum(Height) <= last)
            {
                pages.Add(left);
                return pages;
            }

            var (page, rest) = Fill(left, whole);
            pages.Add(page);
            left = rest;
        }

        // What is signed stands on a sheet with the last lines of the work.
        return pages;
    }

    /// <summary>As much as there is room for; a long round goes on, line by line, on the next sheet. Something is always left for it: the sheet with the signatures.</summary>
    private static (List<CardRound> Page, List<CardRound> Left) Fill(IReadOnlyList<CardRound> rounds, double room)
    {
        var page = new List<CardRound>();
        for (var i = 0; i < rounds.Count; i++)
        {
            var round = rounds[i];
            if (Height(round) <= room && i < rounds.Count - 1)
            {
                page.Add(round);
                room -= Height(round);
                continue;
            }

            var fits = 0;
            for (var taken = Heading; fits < round.Lines.Count - 1 && taken + Height(round.Lines[fits]) <= room; fits++)
            {
                taken += Height(round.Lines[fits]);
            }

            if (page.Count == 0 || round.Lines.Count > 12)
            {
                fits = Math.Max(page.Count == 0 ? 1 : 0, fits);
            }
            else
            {
                fits = 0;
            }

            if (fits > 0)
            {
                page.Add(round with { Lines = [.. round.Lines.Take(fits)], End = null });
                round = round with { Lines = [.. round.Lines.Skip(fits)] };
            }

            return (page, [.. new[] { round }.Where(one => one.Lines.Count > 0), .. rounds.Skip(i + 1)]);
        }

        return (page, []);
    }

    private static double Height(CardRound round) => Heading + round.Lines.Sum(Height) + (round.End is null ? 0 : RoundEnd);

    private static double Height(CardLine line)
    {
        var letters = line.Label.Length + line.Notes.Length + line.Who.Length + 2;
        var text = TextLine * ((letters + LettersInRow - 1) / LettersInRow);
        var boxes = line.Kind == "set" ? BoxLine * ((line.Boxes + BoxesInRow - 1) / BoxesInRow) : line.Kind == "value" ? BoxLine : 0;
        return text + boxes + (line.Kind == "attempt" ? AttemptLine : 0) + (TallyLine * line.Tallies.Count) + Around;
    }
}
