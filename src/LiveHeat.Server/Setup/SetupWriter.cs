using System.Text.Json;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Library;

namespace LiveHeat.Server.Setup;

/// <summary>What became of a change. A closed family.</summary>
internal abstract record SetupChange
{
    private SetupChange()
    {
    }

    /// <summary>It is on disk, and was before if nothing differs.</summary>
    /// <param name="Document">As stored; null after a deletion.</param>
    public sealed record Done(object? Document) : SetupChange;

    /// <summary>It cannot be; nothing was changed.</summary>
    public sealed record Refused(Items<FieldError> Errors) : SetupChange;

    /// <summary>It cannot be deleted, for something needs it.</summary>
    public sealed record InUse(Telling Why) : SetupChange;
}

/// <summary>Changes the setup, one change at a time, so that what was checked is still so when it is written. Safe to repeat.</summary>
internal sealed class SetupWriter(HeatRegistry registry, SetupReader reader, CalledHeats called) : IDisposable
{
    /// <summary>The documents of which there is one: the competition's, and its points'.</summary>
    private const string OnlyId = "competition";

    private readonly SemaphoreSlim turn = new(1, 1);

    public Task<SetupChange> Put(CompetitionSetup competition, CancellationToken cancellation) =>
        Put(SetupKind.Competition, OnlyId, _ => competition.Tidy(), (tidy, _) => SetupCheck.Competition(tidy), cancellation);

    public Task<SetupChange> Put(PointsSetup points, CancellationToken cancellation) =>
        Put(SetupKind.Points, OnlyId, _ => points, PointsSetupCheck.Errors, cancellation);

    public Task<SetupChange> Put(DivisionSetup division, CancellationToken cancellation) =>
        Put(SetupKind.Division, division.Id, _ => division.Tidy(), (tidy, _) => SetupCheck.Division(tidy), cancellation);

    public Task<SetupChange> Put(Workout workout, CancellationToken cancellation) =>
        Put(SetupKind.Workout, workout.Id, all => workout.Tidy().Named(all.Divisions), (tidy, all) => WorkoutSetupCheck.Errors(tidy, Open(all)), cancellation);

    public Task<SetupChange> Put(TeamSetup team, CancellationToken cancellation) =>
        Put(SetupKind.Team, team.Id, _ => team.Tidy(), (tidy, all) => TeamSetupCheck.Errors(tidy, Open(all)), cancellation);

    public Task<SetupChange> Put(HeatSetup heat, CancellationToken cancellation) =>
        Put(SetupKind.Heat, heat.Id, _ => heat.Tidy(), HeatSetupCheck.Errors, cancellation);

    public async Task<SetupChange> Put(LibraryMovement movement, CancellationToken cancellation)
    {
        var pictureIsKept = PictureAddress.KeyOf(movement.Picture) is { } key && await registry.Pictures.Has(key, cancellation);
        return await Put(SetupKind.Movement, movement.Id, _ => movement.Tidy(), (tidy, _) => MovementSetup.Errors(tidy, pictureIsKept), cancellation);
    }

    /// <summary>Attaches a picture to a movement that is there.</summary>
    /// <param name="picture">Checked: it is a picture.</param>
    public async Task<SetupChange> PutPicture(string id, Picture picture, CancellationToken cancellation)
    {
        var address = PictureAddress.Of(id, await registry.Pictures.Put(picture, cancellation));
        var before = (await reader.All(cancellation)).Movements.Single(movement => movement.Id == id);
        return await Put(
            SetupKind.Movement, id, all => (Find(all) ?? before) with { Picture = address },
            (_, all) => Find(all) is null ? [new FieldError("id", SetupRefusals.MovementDeleted)] : [], cancellation);

        LibraryMovement? Find(SetupAll all) => all.Movements.FirstOrDefault(movement => movement.Id == id);
    }

    /// <param name="kind">Any but the competition.</param>
    public async Task<SetupChange> Delete(string kind, string id, CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            if (SetupUses.Of(kind, id, await reader.All(cancellation), called.IsCalled) is { } why)
            {
                return new SetupChange.InUse(why);
            }

            if (await registry.Setup.Delete(kind, id, cancellation))
            {
                reader.Renew();
            }

            return new SetupChange.Done(null);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private async Task<SetupChange> Put<T>(
        string kind, string id, Func<SetupAll, T> tidied, Func<T, SetupAll, IEnumerable<FieldError>> check, CancellationToken cancellation)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            var all = await reader.All(cancellation);
            var document = tidied(all);
            var errors = SetupText.Id("id", id).Concat(check(document, all)).ToItems();
            if (errors.Count > 0)
            {
                return new SetupChange.Refused(errors);
            }

            var json = JsonSerializer.Serialize(document, WireJson.Options);
            if ((await registry.Setup.Get(kind, id, cancellation))?.Json != json)
            {
                await registry.Setup.Put(kind, id, json, cancellation);
                reader.Renew();
            }

            return new SetupChange.Done(document);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Without the heats that were called: they have their own copy of workout and teams, and a change no longer touches them.</summary>
    private SetupAll Open(SetupAll all) => all with { Heats = [.. all.Heats.Where(heat => !called.IsCalled(new HeatId(heat.Id)))] };
}
