namespace LiveHeat.Testing.Paced;

/// <summary>How movements are on one day in one hall, as factors on what is expected of them: every heat of the day shares them.</summary>
/// <param name="Movements">By movement of the shape, tags and lines last.</param>
/// <param name="Lighter">The same where a lighter prescription holds.</param>
public sealed record PacedHall(IReadOnlyList<double> Movements, IReadOnlyList<double> Lighter);
