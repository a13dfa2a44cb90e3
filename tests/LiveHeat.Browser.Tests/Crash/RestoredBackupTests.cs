using LiveHeat.Browser.Pages;
using LiveHeat.Rehearsal.Phones;
using LiveHeat.Testing.Hosting.Faults;
using LiveHeat.Testing.Hosting.Torture;
using Microsoft.Data.Sqlite;

namespace LiveHeat.Browser.Crash;

/// <summary>The machine is gone, and an old backup is all there is: the phones still have what came after it.</summary>
[Collection(OneAtATime.Name)]
public sealed class RestoredBackupTests
{
    private const int PadLane = 1;
    private static readonly int[] SimulatedLanes = [2, 3];

    [Fact]
    public async Task What_came_after_the_backup_comes_back_from_the_phones()
    {
        await using var hall = await ProcessHall.Open(lanes: 3);
        var (floor, desk, link) = (hall.Floor, hall.Desk, hall.Floor.Link());
        var pad = await hall.Pad(PadLane, link);
        foreach (var lane in SimulatedLanes)
        {
            await floor.Phone(lane, link);
        }

        await desk.Go();
        await pad.IsAt("heat");
        await Work(pad, floor, steps: 1..3);
        Backup(floor.Hub.Folder);
        var (epoch, inBackup) = ((await desk.Frame()).Epoch, (await desk.Facts()).Count);

        await Work(pad, floor, steps: 3..6);
        Assert.Equal(inBackup + (3 * (1 + 2 + 2)), (await desk.Facts()).Count);

        // One judge goes on meanwhile, with a step that was never on the old ledger; the others have nothing to send that would tell them.
        link.Be(Fault.Refuse);
        await floor.Hub.Kill();
        Restore(floor.Hub.Folder);
        floor.Phones[0].StepDone(6);
        await floor.Hub.Start("--restored");
        Assert.Equal(inBackup, (await desk.Facts()).Count);
        link.Be(Fault.None);

        await FaultFloor.Until(async () => (await desk.Frame()).Lanes.Select(lane => lane.Open).SequenceEqual([6, 7, 6]), "the ledger has all steps again");
        await floor.AllSafe();
        var after = await desk.Frame();
        Assert.NotEqual(epoch, after.Epoch);
        Assert.Equal([0, 5, 5], after.Lanes.Select(lane => lane.NoReps));
        Assert.Empty(await hall.Broken(inOrder: false));

        // Receipts of the old ledger are worth nothing: each phone holds the places that its taps have now.
        var facts = (await desk.Facts()).ToDictionary(line => line.Fact.Id, line => line.Sequence);
        Assert.All(floor.Phones.SelectMany(phone => phone.Outbox.TapsOf(FaultFloor.Heat)), tap => Assert.Equal(facts[tap.Fact.Id], tap.Receipt!.Sequence));
        await pad.IsAllSafe();
        await pad.Carries("step-done", 6);
    }

    private static async Task Work(JudgePhone pad, FaultFloor floor, Range steps)
    {
        for (var step = steps.Start.Value; step < steps.End.Value; step++)
        {
            await Tap(pad, floor, step);
        }

        await floor.AllSafe();
        await pad.IsAllSafe();
    }

    private static async Task Tap(JudgePhone pad, FaultFloor floor, int step)
    {
        await pad.Record("step-done", step);
        foreach (var phone in floor.Phones)
        {
            phone.NoRep(step);
            phone.StepDone(step);
        }

        await pad.IsStored();
    }

    /// <summary>A copy made while the server writes, as SQLite itself makes one.</summary>
    private static void Backup(string folder)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "ledger.db"), Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        connection.Open();
        using var copy = connection.CreateCommand();
        copy.CommandText = "VACUUM INTO $file";
        copy.Parameters.AddWithValue("$file", Path.Combine(folder, "backup.db"));
        copy.ExecuteNonQuery();
    }

    private static void Restore(string folder)
    {
        foreach (var file in Directory.GetFiles(folder, "ledger.db*"))
        {
            File.Delete(file);
        }

        File.Copy(Path.Combine(folder, "backup.db"), Path.Combine(folder, "ledger.db"));
    }
}
