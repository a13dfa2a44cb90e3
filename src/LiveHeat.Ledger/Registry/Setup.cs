using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>One thing that was set up, as JSON whose shape the server owns.</summary>
/// <param name="Kind">One of <see cref="SetupKind"/>.</param>
/// <param name="Id">Unique within its kind.</param>
/// <param name="Json">The document.</param>
/// <param name="Version">1 when first made, one more at every change, also over a deletion.</param>
public sealed record SetupDocument(string Kind, string Id, string Json, long Version);

/// <summary>The kinds of document. Stored by these names: they are permanent.</summary>
public static class SetupKind
{
    public const string Competition = "competition";
    public const string Division = "division";
    public const string Workout = "workout";
    public const string Team = "team";
    public const string Heat = "heat";
    public const string Movement = "movement";
    public const string Points = "points";
}

/// <summary>The documents of the setup.</summary>
public sealed class Setup
{
    private readonly RegistryFile file;

    internal Setup(RegistryFile file) => this.file = file;

    public Task<SetupDocument?> Get(string kind, string id, CancellationToken cancellation) =>
        file.Read(context => Standing(context).SingleOrDefault(s => s.Kind == kind && s.Id == id)?.ToDocument(), cancellation);

    /// <summary>All of one kind, by id.</summary>
    public Task<IReadOnlyList<SetupDocument>> List(string kind, CancellationToken cancellation) =>
        file.Read(context => InOrder(Standing(context).Where(s => s.Kind == kind)), cancellation);

    /// <summary>Everything, as it was at one moment, by kind and id.</summary>
    public Task<IReadOnlyList<SetupDocument>> List(CancellationToken cancellation) =>
        file.Read(context => InOrder(Standing(context)), cancellation);

    /// <summary>Makes the document or puts another text in its place.</summary>
    public Task<SetupDocument> Put(string kind, string id, string json, CancellationToken cancellation) =>
        file.Write(context => PutOne(context, kind, id, json).ToDocument(), cancellation);

    /// <summary>Many at once, as an import does: all of them or none.</summary>
    public Task<IReadOnlyList<SetupDocument>> PutAll(IReadOnlyList<(string Kind, string Id, string Json)> documents, CancellationToken cancellation) =>
        file.Write<IReadOnlyList<SetupDocument>>(
            context => [.. documents.Select(d => PutOne(context, d.Kind, d.Id, d.Json).ToDocument())],
            cancellation);

    /// <returns>False when there was no such document.</returns>
    public Task<bool> Delete(string kind, string id, CancellationToken cancellation) =>
        file.Write(
            context =>
            {
                if (context.Setup.Find(kind, id) is not { Json: not null } row)
                {
                    return false;
                }

                row.Json = null;
                row.Version++;
                return true;
            },
            cancellation);

    private static IQueryable<SetupRow> Standing(RegistryContext context) =>
        context.Setup.AsNoTracking().Where(s => s.Json != null);

    private static IReadOnlyList<SetupDocument> InOrder(IQueryable<SetupRow> rows) =>
        [.. rows.OrderBy(s => s.Kind).ThenBy(s => s.Id).AsEnumerable().Select(s => s.ToDocument())];

    private static SetupRow PutOne(RegistryContext context, string kind, string id, string json)
    {
        ArgumentException.ThrowIfNullOrEmpty(kind);
        ArgumentException.ThrowIfNullOrEmpty(id);
        ArgumentNullException.ThrowIfNull(json);
        var row = context.Setup.Find(kind, id);
        if (row is null)
        {
            row = new SetupRow { Kind = kind, Id = id, Json = json, Version = 0 };
            context.Setup.Add(row);
        }

        row.Json = json;
        row.Version++;
        return row;
    }
}
