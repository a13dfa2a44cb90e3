using System.Globalization;

namespace LiveHeat.Testing.Hosting.Torture;

/// <summary>What a torture came to.</summary>
/// <param name="Kills">Times the server was killed.</param>
/// <param name="Cuts">Connections cut.</param>
/// <param name="Made">Taps made on phones.</param>
/// <param name="Accepted">Taps with a receipt.</param>
/// <param name="Found">Of those, on the ledger.</param>
/// <param name="Doubled">Ids that stand on the ledger more than once, and no-reps that the fold counts more often than they were made.</param>
/// <param name="Misplaced">Taps of a phone that stand before one it made earlier, and lanes whose open step is not the phone's.</param>
/// <param name="Refused">Taps refused or called a conflict.</param>
internal sealed record TortureReport(int Kills, int Cuts, int Made, int Accepted, int Found, int Doubled, int Misplaced, int Refused)
{
    /// <summary>Acknowledged and not there, or made and never acknowledged although all faults were over.</summary>
    public int Lost => Math.Max(Accepted - Found, Made - Found);

    /// <summary>Nothing lost, doubled, misplaced or refused.</summary>
    public bool Sound => Lost == 0 && Doubled == 0 && Misplaced == 0 && Refused == 0;

    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"kills={Kills} cuts={Cuts} made={Made} accepted={Accepted} found={Found} doubled={Doubled} misplaced={Misplaced} refused={Refused} lost={Lost}");
}
