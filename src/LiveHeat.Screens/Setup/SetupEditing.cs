using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Setup;

/// <summary>Reads, keeps and deletes what is set up; a deletion can be undone.</summary>
public sealed class SetupEditing(HeatApi api, SetupStore store, Feed feed)
{
    /// <summary>Reads everything.</summary>
    public async Task Read() => store.Take(await api.Setup());

    /// <summary>Reads the library once: it comes with the program.</summary>
    public async Task ReadLibrary()
    {
        if (store.Library is null)
        {
            store.Take(await api.Library());
        }
    }

    /// <summary>Attaches a picture to an own movement that is kept.</summary>
    /// <returns>What is wrong; null when it is kept.</returns>
    public async Task<Problem?> Attach(string movement, string contentType, byte[] picture)
    {
        var reply = await api.PutPicture(movement, contentType, picture);
        if (reply.Problem is null)
        {
            await Read();
        }

        return reply.Problem;
    }

    /// <summary>Keeps a document.</summary>
    /// <returns>What is wrong; null when it is kept.</returns>
    public async Task<Problem?> Keep(object document)
    {
        var reply = await (document switch
        {
            CompetitionSetup competition => api.Keep(competition),
            DivisionSetup division => api.Keep(division),
            Workout workout => api.Keep(workout),
            TeamSetup team => api.Keep(team),
            HeatSetup heat => api.Keep(heat),
            PointsSetup points => api.Keep(points),
            LibraryMovement movement => api.Keep(movement),
            _ => throw new ArgumentOutOfRangeException(nameof(document), document.GetType().Name, "Nothing of the setup."),
        });
        if (reply.Problem is null)
        {
            await Renew();
        }

        return reply.Problem;
    }

    /// <summary>Deletes a document; <see cref="Undo"/> brings it back.</summary>
    public async Task<Problem?> Delete(object document)
    {
        var (kind, id, name) = document switch
        {
            DivisionSetup division => ("divisions", division.Id, division.Name),
            Workout workout => ("workouts", workout.Id, workout.Name),
            TeamSetup team => ("teams", team.Id, team.Name),
            HeatSetup heat => ("heats", heat.Id, heat.Title),
            LibraryMovement movement => ("movements", movement.Id, movement.Name),
            _ => throw new ArgumentOutOfRangeException(nameof(document), document.GetType().Name, "This is not deleted."),
        };
        var reply = await api.Delete(kind, id);
        if (reply.Problem is null)
        {
            await Renew();
            store.Take(new Deleted(name, document));
        }

        return reply.Problem;
    }

    /// <summary>Brings back what was deleted last.</summary>
    public async Task<Problem?> Undo()
    {
        if (store.Deleted is not { } deleted)
        {
            return null;
        }

        var problem = await Keep(deleted.Document);
        store.Take(problem is null ? null : deleted);
        return problem;
    }

    private Task Renew() => Task.WhenAll(Read(), feed.ReadProgram());
}
